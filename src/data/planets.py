"""Writes the planetary ephemeris of the jar: JPL DE405, 2000-01 to 2059-12, Sun, Moon and Mercury to Neptune.

Reads the casacore table of Debian's package casacore-data-jpl-de405 and writes JPL's own binary form (big endian,
one record a block). Pluto, nutations and librations are left out.
Usage: /usr/bin/python3 planets.py OUTPUT     (packages: casacore-data-jpl-de405 python3-casacore python3-numpy)
"""
import struct
import sys

from casacore.tables import table

TABLE = "/usr/share/casacore/data/ephemerides/DE405"
FIRST_MJD, LAST_MJD = 51544, 73459  # 2000-01-01, 2060-01-01
JD_OF_MJD_ZERO = 2400000.5
RECORD_DAYS = 32
# Mercury, Venus, Earth-Moon barycentre, Mars, Jupiter, Saturn, Uranus, Neptune, Pluto, Moon, Sun, nutations, librations
KEPT = [True] * 8 + [False, True, True, False, False]

source = table(TABLE, ack=False)
constants = {name: value for name, value in source.getkeywords().items()
             if isinstance(value, float) and name not in ("MJD0", "dMJD", "TDATEF", "TDATEB", "CENTER")}
starts, counts, granules = source.getcolkeyword("x", "Description").reshape(3, 13).tolist()

pointers, next_start = [], 3
for item, kept in enumerate(KEPT):
    components = 2 if item == 11 else 3
    size = counts[item] * granules[item] * components if kept else 0
    pointers.append((next_start, counts[item] if kept else 0, granules[item] if kept else 0))
    next_start += size
record_doubles = next_start - 1

records = []
for row in range(source.nrows()):
    mjd = source.getcell("MJD", row)
    if mjd + RECORD_DAYS <= FIRST_MJD or mjd >= LAST_MJD:
        continue
    x = source.getcell("x", row)
    record = [mjd + JD_OF_MJD_ZERO, mjd + RECORD_DAYS + JD_OF_MJD_ZERO]
    for item, kept in enumerate(KEPT):
        if kept:
            start = starts[item] - 3
            record.extend(x[start:start + counts[item] * granules[item] * 3])
    assert len(record) == record_doubles
    records.append((mjd, record))
records.sort()
assert all(b[0] - a[0] == RECORD_DAYS for a, b in zip(records, records[1:]))

first, last = records[0][1][0], records[-1][1][1]
names = list(constants)
header = bytearray(8 * record_doubles)
for line, title in enumerate(("JPL Planetary Ephemeris DE405/LE405", f"Start Epoch: JED= {first:11.1f}",
                              f"Final Epoch: JED= {last:11.1f}")):
    header[84 * line:84 * (line + 1)] = title.ljust(84).encode("ascii")
for i in range(400):
    header[252 + 6 * i:258 + 6 * i] = (names[i] if i < len(names) else "").ljust(6).encode("ascii")
struct.pack_into(">3d", header, 2652, first, last, float(RECORD_DAYS))
struct.pack_into(">i", header, 2676, len(names))
struct.pack_into(">2d", header, 2680, constants["AU"], constants["EMRAT"])
for item in range(12):
    struct.pack_into(">3i", header, 2696 + 12 * item, *pointers[item])
struct.pack_into(">i", header, 2840, int(constants["DENUM"]))
struct.pack_into(">3i", header, 2844, *pointers[12])

values = bytearray(8 * record_doubles)
struct.pack_into(f">{len(names)}d", values, 0, *constants.values())

with open(sys.argv[1], "wb") as out:
    out.write(header)
    out.write(values)
    for _, record in records:
        out.write(struct.pack(f">{record_doubles}d", *record))
