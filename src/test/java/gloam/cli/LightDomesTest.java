package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Towns around a site, from the trip file to the exposure. */
class LightDomesTest {

    @TempDir
    Path folder;

    private Path trip(String domes) throws IOException {
        return Files.writeString(folder.resolve("trip.yaml"), """
                sites:
                  - name: Loma
                    latitude-deg: 41.05
                    longitude-deg: -2.15
                    height-m: 1080
                    zone: Europe/Madrid
                    light-domes: %s
                nights: {from: 2027-02-08, to: 2027-02-08}
                camera: {name: Box, focal-length-mm: 120, frame-mm: 80x80, f-numbers: [11]}
                film: instant-mono-640
                sheets: 1
                """.formatted(domes));
    }

    private double skyMag(String domes, int azimuthDeg) throws IOException {
        return Run.json("expose --trip " + trip(domes) + " --at 2027-02-09T03:00 --azimuth " + azimuthDeg
                + " --altitude 14").at("/situation/skyMagArcsec2").doubleValue();
    }

    /**
     * Walker 1977 and Garstang 1986: 14° high over 50 000 people 20 km away a glow of about 2.8 natural
     * zeniths stands on a sky of 1.7; opposite it none to speak of.
     */
    @Test
    void aTownBrightensTheSkyOverItAlone() throws IOException {
        String town = "[{azimuth-deg: 359, people: 50000, distance-km: 20}]";
        assertTrue(skyMag("[]", 1) - skyMag(town, 1) > 0.8);
        assertEquals(skyMag("[]", 180), skyMag(town, 180), 0.15);
    }

    @Test
    void whatIsMeasuredOverATownIsTheSkyThere() throws IOException {
        String measured = "[{azimuth-deg: 140, altitude-deg: 14, mag-arcsec2: 19.4}]";
        assertEquals(19.4, skyMag(measured, 140), 0.15);
    }

    @Test
    void checkShowsThem() throws IOException {
        Path file = trip("[{azimuth-deg: 140, people: 20000, distance-km: 25}, "
                + "{azimuth-deg: 255, altitude-deg: 15, mag-arcsec2: 20.4, colour-k: 2000}]");
        String text = Run.of("check", "--trip", file.toString()).out().replaceAll("\\s+", " ");
        assertTrue(text.contains("town at 140°: 20000 people, 25 km"), text);
        assertTrue(text.contains("town at 255°: 20.4 mag/arcsec² at altitude 15°"), text);
        JsonNode json = Run.json("check --trip " + file);
        assertEquals(20000, json.at("/sites/0/lightDomes/0/people").intValue());
        assertTrue(json.at("/sites/0/lightDomes/1/people").isNull());
        assertEquals(2000, json.at("/sites/0/lightDomes/1/colourK").intValue());
    }

    @Test
    void whatIsWrongIsNamedWithItsPlace() throws IOException {
        String wrong = Run.of("check", "--trip", trip("[{azimuth-deg: 361, people: 20, distance-km: 25}, "
                + "{azimuth-deg: 20, altitude-deg: 15, people: 5000, mag-arcsec2: 20}]").toString()).err();
        assertTrue(wrong.contains("sites[0].light-domes[0].azimuth-deg: azimuth 361 deg is out of range"),
                wrong);
        assertTrue(wrong.contains("light-domes[0].people: people 20 is out of range; give 100 … 50000000"),
                wrong);
        assertTrue(wrong.contains("light-domes[1].people: stands beside a measured glow"), wrong);
        String half = Run.of("check", "--trip", trip("[{azimuth-deg: 20, people: 5000}]").toString()).err();
        assertTrue(half.contains("light-domes[0].distance-km: is missing"), half);
    }
}
