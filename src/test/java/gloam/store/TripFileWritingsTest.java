package gloam.store;

import static gloam.store.TripFileTest.YAML;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Star;
import gloam.gear.Skyline;
import gloam.planner.Aim;
import gloam.planner.Trip;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a trip file says may be written in several ways. */
class TripFileWritingsTest {

    @TempDir
    Path folder;

    @Test
    void numbersMayBeWrittenWithTheirUnits() {
        String plain = YAML.replace(",\n     sea-horizon: true, skyline: skyline.csv", "");
        String written = plain.replace("latitude-deg: 40.41, longitude-deg: -1.23, height-m: 1320",
                "place: 40°24′36″N 1:13:48W 1.32km")
                .replace("21.4,", "21.4 mag/arcsec2,")
                .replace("focal-length-mm: 120", "focal-length-mm: 12 cm")
                .replace("{width: 80, height: 70}", "8x7cm").replace("[45, 11, 12]", "[f/45, 1:11, f12]")
                .replace("focus-m: 3", "focus-m: 300cm").replace("spot-um: 50", "spot-um: 0.05 mm")
                .replace("changeover-min: 6.5", "changeover-min: 6m30s")
                .replace("filter-stops: 1", "filter-stops: 1 stop")
                .replace("exposure-s: 0.5", "exposure-s: 0.5s").replace("least: 15", "least: 1.5cm")
                .replace("longest: 180.5", "longest: 3h30s").replace("shortest: 20", "shortest: PT20M");
        assertEquals(read("trip.yaml", plain).trip(), read("trip.yaml", written).trip());
        String byTwoKeys = plain.replace("latitude-deg: 40.41, longitude-deg: -1.23",
                "latitude-deg: 40:24:36, longitude-deg: W 1:13.8");
        assertEquals(read("trip.yaml", plain).trip(), read("trip.yaml", byTwoKeys).trip());
    }

    @Test
    void aLensMayBeKnownByItsTNumber() {
        Refusals.file(folder, "skyline.csv", "azimuth_deg,altitude_deg\n0,5\n");
        TripFile.Reading reading = read("t.yaml",
                YAML.replace("transmittance: 0.88", "t-stop: {f-number: 2, t-number: 2.236}"));
        // T = N/√τ: f/2 at τ = 0.8 is T 2.236, independently computed to four digits
        assertEquals(0.8, reading.trip().camera().lens().transmittance(), 2e-4);
        assertEquals(List.of(), reading.defaultsUsed());
    }

    @Test
    void starsAreFollowedByName() {
        Trip trip = read("t.yaml", YAML.replace("{ra-deg: 10, dec-deg: -20}", "vega")
                .replace(", skyline: skyline.csv", "")).trip();
        Star vega = (Star) ((Aim.Follow) trip.wishes().get(2).aim()).target();
        assertEquals("Vega", vega.name());
        assertEquals(279.23, vega.rightAscensionDeg(), 0.01,
                "Hipparcos: 279.2347 deg; to 0.01 deg, from memory");
    }

    @Test
    void jsonSaysTheSameAsYaml() {
        String json = """
                {"sites": [{"name": "A", "latitude-deg": 1, "longitude-deg": 2, "height-m": 3, "zone": "UTC"}],
                 "nights": {"from": "2027-02-01", "to": "2027-02-02"}, "film": "digital-640", "sheets": 2,
                 "camera": {"focal-length-mm": 50, "frame-mm": {"width": 36, "height": 24}, "f-numbers": [2.8]},
                 "title": "t", "wishes": [{"name": "w", "follow": {"body": "venus"}}]}
                """;
        TripFile.Reading fromJson = read("t.json", json);
        TripFile.Reading fromYaml = read("t.yaml", json);
        assertEquals(fromYaml.trip().wishes(), fromJson.trip().wishes());
        assertEquals(fromYaml.trip().camera(), fromJson.trip().camera());
        assertEquals(fromYaml.defaultsUsed(), fromJson.defaultsUsed());
    }

    @Test
    void sectionsMayStandInFilesOfTheirOwn() {
        assertTrue(folder.resolve("sub").toFile().mkdir());
        Refusals.file(folder, "sub/sites.yaml",
                "- {name: A, latitude-deg: 1, longitude-deg: 2, height-m: 3, zone: UTC, skyline: s.csv}\n");
        Refusals.file(folder, "sub/s.csv", "azimuth_deg,altitude_deg\n0,7\n");
        Refusals.file(folder, "own.json", "{\"name\": \"own\", \"iso\": 25, \"kind\": \"negative\", "
                + "\"reciprocity\": {\"model\": \"none\"}}");
        Trip trip = read("t.yaml", """
                sites: sub/sites.yaml
                nights: {from: 2027-02-01, to: 2027-02-01}
                camera: {focal-length-mm: 50, frame-mm: {width: 36, height: 24}, f-numbers: [2.8]}
                film: own.json
                sheets: 1
                """).trip();
        assertEquals(List.of(new Skyline.Point(0, 7)), trip.sites().get(0).skyline().points());
        assertEquals("own", trip.film().name());
    }

    private TripFile.Reading read(String name, String text) {
        return TripFile.read(Refusals.file(folder, name, text));
    }
}
