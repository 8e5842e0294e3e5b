package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** A digital frame and a forecast for one site alone, and the sky that a frame sets. */
class SiteOwnKeysTest {

    /**
     * Of a frame at f/2, ISO 640 and 30 s: L = q K N²/(π/4 τ S t) with q = 0.65 and K = 12.5 of ISO 2720, and
     * the 0.9 that the camera's lens passes; 0 V mag/arcsec² is 1.08e5 cd/m².
     */
    private static final double FRAME_MAG =
            -2.5 * Math.log10(0.65 * 12.5 * 4 / (Math.PI / 4 * 0.9 * 640 * 30) / 1.08e5);

    @TempDir
    Path folder;

    @BeforeEach
    void forecasts() throws IOException {
        Files.writeString(folder.resolve("clear.csv"),
                "time,cloud_fraction\n2027-03-05T12:00Z,0.1\n2027-03-06T12:00Z,0.1\n");
        Files.writeString(folder.resolve("cloudy.csv"),
                "time,cloud_fraction\n2027-03-05T12:00Z,0.6\n2027-03-06T12:00Z,0.6\n");
    }

    private String trip(String garden, String heath, String more) throws IOException {
        return Files.writeString(folder.resolve("trip.yaml"), """
                title: First pack
                sites:
                  - {name: Back garden, latitude-deg: 52.06, longitude-deg: 4.45, height-m: 2, zone: Europe/Amsterdam%s}
                  - {name: Heath, latitude-deg: 52.83, longitude-deg: 6.45, height-m: 14, zone: Europe/Amsterdam%s}
                nights: {from: 2027-03-05, to: 2027-03-05}
                camera: {name: box, focal-length-mm: 106, frame-mm: {width: 79, height: 79}, f-numbers: [12, 16, 22]}
                film: instant-mono-640
                sheets: 1
                %s
                wishes:
                  - name: Wheel
                    pole: {}
                    sky: dark
                    tone-at-most-stops: -1
                    exposure-min: {shortest: 60, longest: 90}
                """.formatted(garden, heath, more)).toString();
    }

    private static JsonNode sites(String trip) throws IOException {
        return Run.json("check --trip " + trip)
                .get("sites");
    }

    private static String words(String... args) {
        return Run.of(args).out().replaceAll("\\s+", " ");
    }

    @Test
    void theFrameSetsTheSkyOfSitesThatStateNone() throws IOException {
        String trip = trip("", ", dark-sky-mag-arcsec2: 21.2",
                "preview: {f-number: 2, iso: 640, exposure-s: 30}");
        JsonNode sites = sites(trip);
        assertEquals(FRAME_MAG, sites.get(0).get("darkSkyMagArcsec2").asDouble(), 0.02);
        assertTrue(sites.get(0).get("skyByFrame").asBoolean());
        assertEquals(21.2, sites.get(1).get("darkSkyMagArcsec2").asDouble());
        assertTrue(!sites.get(1).get("skyByFrame").asBoolean());
        String plan = words("plan", "--trip", trip);
        assertTrue(plan.contains("- the sky of Back garden is that of the preview frame: 19.1 mag/arcsec²"),
                plan);
        assertTrue(plan.contains("shows a mid-tone for a sky of 19.1 mag/arcsec²; the plan uses the 21.2 "
                + "stated " + "for Heath"), plan);
        String check = words("check", "--trip", trip);
        assertTrue(check.contains("moonless zenith 19.14 mag/arcsec² by the preview frame,"), check);
        assertTrue(check.contains("moonless zenith 21.2 mag/arcsec² as stated, 19.1 by the preview frame,"),
                check);
        assertTrue(!check.contains("dark-sky-mag-arcsec2: 21.6"), check);
    }

    /** Under a garden's sky the same exposure comes out lighter: the plan knows it is no dark country. */
    @Test
    void aGardenIsPlannedUnderItsOwnSky() throws IOException {
        String dark = trip("", "", "");
        double darkStops = Timetables.windows(Timetables.json(dark, "--site", "Back garden")).get(0)
                .get("skyToneStops").asDouble();
        String metered = trip(", preview: {f-number: 2, iso: 640, exposure-s: 30}", "", "");
        double meteredStops = Timetables.windows(Timetables.json(metered, "--site", "Back garden")).get(0)
                .get("skyToneStops").asDouble();
        assertTrue(meteredStops > darkStops + 0.5, darkStops + " and " + meteredStops);
        assertEquals(21.6, sites(metered).get(1).get("darkSkyMagArcsec2").asDouble(),
                "the heath has no frame");
        assertEquals(640, sites(metered).get(0).get("preview").get("iso").asDouble());
        assertTrue(words("expose", "--trip", metered, "--site", "Back garden").contains("ISO 640, 30 s"));
    }

    @Test
    void aSitesOwnForecastOutranksThatOfTheTrip() throws IOException {
        JsonNode own = Timetables.windows(Timetables.json(trip(", forecast: cloudy.csv", "",
                "forecast: clear.csv"))).get(0);
        assertEquals(0.1, own.get("cloud").get("meanFraction").asDouble());
        JsonNode plan = new ObjectMapper().readTree(Timetables.json(trip(", forecast: cloudy.csv", "",
                "forecast: clear.csv")));
        assertEquals("Heath", plan.get("nights").get(0).get("site").asString());
        JsonNode other = new ObjectMapper().readTree(Timetables.json(trip(", forecast: clear.csv",
                ", forecast: cloudy.csv", "")));
        assertEquals("Back garden", other.get("nights").get(0).get("site").asString());
        String check = words("check", "--trip", trip(", forecast: cloudy.csv", "", ""));
        assertTrue(check.contains("forecast for Back garden Fri 2027-03-05 13:00 … Sat 2027-03-06 13:00;"),
                check);
        assertTrue(!check.contains("forecast for Heath"), check);
    }

    @Test
    void errorsStandAtTheirPlace() throws IOException {
        Run run = Run.of("check", "--trip", trip(", forecast: none.csv", "",
                "preview: {f-number: 2, iso: 640, exposure-s: 30000}"));
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("trip.yaml:3:114 sites[0].forecast: no file"), run.err());
        Run light = Run.of("check", "--trip",
                trip("", "", "preview: {f-number: 64, iso: 1, exposure-s: 0.001}"));
        assertEquals(2, light.exit());
        assertTrue(light.err().contains("9:10 preview: dark sky "), light.err());
    }
}
