package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.frame.FrameMaker;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Frames measured at a trip's site, and what their measurements do to its plan. */
class MeasuredSkyInTripsTest {

    private static final String TRIP = """
            sites:
              - name: Pasture
                place: 44.2,9.7,620
                zone: UTC
                sky: %s
            nights: {from: 2027-02-08, to: 2027-02-08}
            camera: {name: Box, focal-length-mm: 120, frame-mm: 80x80, f-numbers: [8, 11]}
            film: instant-mono-640
            sheets: 1
            wishes:
              - {name: Pond, point: {azimuth-deg: 170, altitude-deg: 40}, sky: dark,
                 exposure-min: {shortest: 30, longest: 30}}
            """;

    private static final String READING = """
            {"at": "2027-02-08T22:00:00Z", "azimuthDeg": 1, "altitudeDeg": %s, "magArcsec2": 21,
             "errorMag": 0.3}""";

    @TempDir
    Path folder;

    @Test
    void landIsLeftOut() throws IOException {
        FrameMaker maker = MeasureCommandTest.maker();
        maker.landDeg = 30;
        maker.skyMag = seen -> 20.6;
        Path frame = Files.write(folder.resolve("frame.jpg"), maker.jpeg());
        Files.writeString(folder.resolve("hills.csv"), "azimuth_deg,altitude_deg\n0,30\n180,30\n");
        Path trip = Files.writeString(folder.resolve("trip.yaml"), TRIP.formatted("[]")
                .replace("    sky: []", "    skyline: hills.csv"));
        JsonNode pieces = Run.json("measure " + frame + " --trip " + trip).at("/frames/0/pieces");
        assertTrue(pieces.size() > 5);
        for (JsonNode piece : pieces) {
            assertEquals(20.6, MeasureCommandTest.number(piece, "/magArcsec2"), 0.08, piece.toString());
        }
    }

    /** A frame of an even sky, by a camera that states its index by standard output sensitivity. */
    private Path frame() throws IOException {
        FrameMaker maker = MeasureCommandTest.maker();
        maker.skyMag = seen -> 20.5;
        return Files.write(folder.resolve("frame.jpg"),
                maker.tags().index(1).into(FrameMaker.jpeg(maker.picture(), 0.92f)));
    }

    /** The lines it prints are read by the trip file; plan and expose then know the sky better. */
    @Test
    void whatWasMeasuredNarrowsThePlan() throws IOException {
        Path frame = frame();
        String text = Run.printed("measure " + frame + " " + MeasureCommandTest.PLACE);
        String lines = text.substring(text.indexOf("  - {at: ")).strip();
        String indented = "\n" + lines.lines().map(line -> "      " + line.strip() + "\n")
                .reduce("", String::concat);
        Path before = Files.writeString(folder.resolve("before.yaml"), TRIP.formatted("[]"));
        Path after = Files.writeString(folder.resolve("after.yaml"), TRIP.formatted(indented));
        String expose = " --at 2027-02-08T22:00 --azimuth 170 --altitude 40";
        assertTrue(spread("expose", before, expose, "/exposures/0/skyToneSpreadStops")
                > spread("expose", after, expose, "/exposures/0/skyToneSpreadStops") + 0.02);
        assertTrue(spread("plan", before, "", "/nights/0/windows/0/skyToneSpreadStops")
                > spread("plan", after, "", "/nights/0/windows/0/skyToneSpreadStops") + 0.005);
        double model = spread("expose", before, expose, "/situation/skyMagArcsec2");
        double moved = spread("expose", after, expose, "/situation/skyMagArcsec2");
        assertTrue(moved < model - 0.2 && moved > 20.4, model + " became " + moved);
    }

    /** Kept as JSON it serves expose as its lines do in the trip, for the trip's site and without a trip. */
    @Test
    void whatWasMeasuredServesExposeByItself() throws IOException {
        Path frame = frame();
        Path trip = Files.writeString(folder.resolve("trip.yaml"), TRIP.formatted("[]"));
        Path sky = folder.resolve("sky.json");
        Run.printed("measure " + frame + " --trip " + trip + " --format json --out " + sky);
        StringBuilder lines = new StringBuilder("\n");
        for (JsonNode at : Run.json("measure " + frame + " --trip " + trip).get("sky")) {
            lines.append("      - {at: %s, azimuth-deg: %s, altitude-deg: %s,\n".formatted(
                    at.get("at").stringValue(), at.get("azimuthDeg"), at.get("altitudeDeg")));
            lines.append("         mag-arcsec2: %s, error-mag: %s}\n".formatted(at.get("magArcsec2"),
                    at.get("errorMag")));
        }
        Path written = Files.writeString(folder.resolve("written.yaml"), TRIP.formatted(lines));
        String aim = " --at 2027-02-08T22:00 --azimuth 170 --altitude 40";
        JsonNode asWritten = Run.json("expose --trip " + written + aim);
        JsonNode ofTrip = Run.json("expose --trip " + trip + " --measured " + sky + aim);
        assertEquals(asWritten.get("exposures"), ofTrip.get("exposures"));
        assertTrue(MeasureCommandTest.number(ofTrip, "/situation/skyMagArcsec2")
                < MeasureCommandTest.number(Run.json("expose --trip " + trip + aim),
                        "/situation/skyMagArcsec2") - 0.2);
        JsonNode alone = Run.json("expose --film instant-mono-640 --measured " + sky + aim);
        assertEquals(asWritten.at("/situation/skyMagArcsec2"), alone.at("/situation/skyMagArcsec2"));
    }

    @Test
    void whatIsNotASkyOfThePlaceIsRefused() throws IOException {
        Path trip = Files.writeString(folder.resolve("trip.yaml"), TRIP.formatted("[]"));
        Path other = kept("Quay", READING.formatted(40));
        String aim = "--at 2027-02-08T22:00 --azimuth 170 --altitude 40 --trip " + trip + " --measured ";
        assertTrue(refused(aim + other).startsWith(
                "site \"Quay\" is not in the trip; it has Pasture (--measured)\n"));
        assertTrue(refused(aim + kept("Pasture", "")).contains("holds no measurement of the sky"));
        assertTrue(refused(aim + Files.writeString(folder.resolve("plan.json"), "{\"nights\": []}"))
                .contains("holds no measurement of the sky. Give what gloam measure --format json wrote"));
        assertTrue(refused(aim + kept("Pasture", READING.formatted(4)))
                .contains("altitude of the measured sky 4 deg is out of range; give 5 … 90 deg"));
        String film = "--film instant-mono-640 --measured " + other;
        assertTrue(refused(film + " --sky-mag-arcsec2 21")
                .contains("--measured needs an instant; add --from"));
        assertTrue(refused(film + " --place 44,9,9 --zone UTC --at 2027-02-08T22:00")
                .contains("--measured gives the place"));
    }

    private Path kept(String site, String readings) throws IOException {
        return Files.writeString(folder.resolve(site + readings.length() + ".json"), """
                {"site": {"name": "%s", "latitudeDeg": 44, "longitudeDeg": 9, "heightM": 9, "zone": "UTC",
                 "darkSkyMagArcsec2": 21, "extinctionMag": 0.3}, "sky": [%s]}
                """.formatted(site, readings));
    }

    private static String refused(String options) {
        Run run = Run.of(("expose " + options).split(" "));
        assertEquals(2, run.exit(), run.out());
        return run.err();
    }

    private static double spread(String command, Path trip, String options, String path) {
        return MeasureCommandTest.number(Run.json(command + " --trip " + trip + options), path);
    }
}
