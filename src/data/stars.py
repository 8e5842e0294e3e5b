"""Writes the star table of the jar: every star of d3-celestial's stars.6.json, brightest first, with its names.

Reads the unpacked npm package d3-celestial 0.7.35. Of starnames.json only the proper name, the Bayer letter, the
Flamsteed number and the constellation are taken, because its translated names stand under another licence.
Usage: python3 stars.py PACKAGE_DIRECTORY OUTPUT     (npm pack d3-celestial@0.7.35; tar xzf the package)
"""
import json
import sys

package, output = sys.argv[1:]
with open(f"{package}/data/stars.6.json", encoding="utf-8") as file:
    stars = json.load(file)["features"]
with open(f"{package}/data/starnames.json", encoding="utf-8") as file:
    names = json.load(file)

HEADER = ("# Stars to magnitude 6, ICRS, epoch J2000.0; source: XHIP (Anderson & Francis 2012) and the Hipparcos "
          "catalogue (ESA 1997)\n# by way of d3-celestial 0.7.35, see orekit-data-notes.md\n"
          "# hip\tra_deg\tdec_deg\tv_mag\tb_v_mag\tbayer\tflamsteed\tconstellation\tname\n")

with open(output, "w", encoding="utf-8", newline="\n") as out:
    out.write(HEADER)
    for star in sorted(stars, key=lambda star: (star["properties"]["mag"], star["id"])):
        ra, dec = star["geometry"]["coordinates"]
        called = names.get(str(star["id"]), {})
        if called.get("bayer", "").startswith("undefined"):  # a letter lost in the package
            called["bayer"] = ""
        if called.get("c", "").isdigit():  # a number in the constellation's place
            called["c"] = ""
        fields = [str(star["id"]), f"{ra % 360:.4f}", f"{dec:.4f}", f"{star['properties']['mag']:.2f}",
                  star["properties"]["bv"]] + [called.get(key, "") for key in ("bayer", "flam", "c", "name")]
        out.write("\t".join(fields) + "\n")
