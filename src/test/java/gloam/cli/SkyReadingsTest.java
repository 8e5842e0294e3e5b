package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Measurements of a site's sky, from the trip file to the exposure. */
class SkyReadingsTest {

    @TempDir
    Path folder;

    private Path trip(String sky) throws IOException {
        return Files.writeString(folder.resolve("trip.yaml"), """
                sites:
                  - name: Loma
                    place: 41.05,-2.15,1080
                    zone: Europe/Madrid
                    sky: %s
                nights: {from: 2027-02-08, to: 2027-02-08}
                camera: {name: Box, focal-length-mm: 120, frame-mm: 80x80, f-numbers: [11]}
                film: instant-mono-640
                sheets: 1
                """.formatted(sky));
    }

    private JsonNode expose(String sky) throws IOException {
        return Run.json("expose --trip " + trip(sky) + " --at 2027-02-09T03:00 --azimuth 0 --altitude 60");
    }

    /** A moonless zenith measured 0.5 mag brighter than the default moves the sky most of the way. */
    @Test
    void aMeasuredSkyIsTheSkyAndNarrowsIt() throws IOException {
        String zenith = "[{at: 2027-01-08T22:30, mag-arcsec2: 20.8, error-mag: 0.05},"
                + " {at: 2027-01-09T02:30+01:00, mag-arcsec2: 20.9, error-mag: 0.05}]";
        JsonNode before = expose("[]");
        JsonNode after = expose(zenith);
        double movedMag = before.at("/situation/skyMagArcsec2").doubleValue()
                - after.at("/situation/skyMagArcsec2").doubleValue();
        assertTrue(movedMag > 0.15 && movedMag < 0.7, "moved by " + movedMag);
        assertTrue(after.at("/exposures/0/skyToneSpreadStops").doubleValue()
                < before.at("/exposures/0/skyToneSpreadStops").doubleValue() - 0.02);
        Path file = trip(zenith);
        String text = Run.of("check", "--trip", file.toString()).out().replaceAll("\\s+", " ");
        assertTrue(text.matches(".*as measured, zenith ± 0\\.[012]\\d stops: "
                + "20\\.8 \\(fit [+−]\\d\\.\\d\\d\\), "
                + "20\\.9 .*"), text);
        JsonNode site = Run.json("check --trip " + file).at("/sites/0");
        assertEquals(2, site.get("sky").size());
        assertTrue(site.get("sky").get(0).get("leftMag").isNumber());
        assertEquals(0.3, Run.json("check --trip " + trip("[]")).at("/sites/0/zenithSpreadStops")
                .doubleValue());
    }

    /** A meter read in dusk narrows the dusk of that evening, not that of the next, nor the night. */
    @Test
    void aTwilightThatWasMeasuredIsNarrowedThatEvening() throws IOException {
        String dusk = "[{at: 2027-02-08T19:25, azimuth-deg: 255, altitude-deg: 45, mag-arcsec2: 17.1}]";
        double before = spreadStops("[]", "2027-02-08T19:30");
        assertEquals(0.3 / 0.8, spreadStops(dusk, "2027-02-08T19:30") / before, 0.06);
        assertEquals(before, spreadStops(dusk, "2027-02-07T19:30"), 0.02);
        assertEquals(spreadStops("[]", "2027-02-09T03:00"), spreadStops(dusk, "2027-02-09T03:00"), 0.02);
        assertTrue(Run.of("check", "--trip", trip(dusk).toString()).out().replaceAll("\\s+", " ")
                .contains("that twilight ± 0.3"));
    }

    private double spreadStops(String sky, String at) throws IOException {
        return Run.json("sky --trip " + trip(sky) + " --at " + at + " --azimuth 255 --altitude 30")
                .at("/towards/spreadStops").doubleValue();
    }

    @Test
    void whatIsWrongIsNamedWithItsPlace() throws IOException {
        String wrong = Run.of("check", "--trip", trip("[{at: tonight, mag-arcsec2: 25}, "
                + "{at: 2027-01-08T22:30, altitude-deg: 2}]").toString()).err();
        assertTrue(wrong.contains("sky[0].at: expected a date and time such as 2027-02-06T22:30"), wrong);
        assertTrue(wrong.contains("sky[0].mag-arcsec2: measured sky 25 mag/arcsec2 is out of range"), wrong);
        assertTrue(wrong.contains("sky[1].altitude-deg: altitude of the measured sky 2 deg is out"), wrong);
        assertTrue(wrong.contains("sky[1].mag-arcsec2: is missing"), wrong);
    }
}
