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

    /** The lines it prints are read by the trip file; plan and expose then know the sky better. */
    @Test
    void whatWasMeasuredNarrowsThePlan() throws IOException {
        FrameMaker maker = MeasureCommandTest.maker();
        maker.skyMag = seen -> 20.5;
        Path frame = Files.write(folder.resolve("frame.jpg"),
                maker.tags().index(1).into(FrameMaker.jpeg(maker.picture(), 0.92f)));
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

    private static double spread(String command, Path trip, String options, String path) {
        return MeasureCommandTest.number(Run.json(command + " --trip " + trip + options), path);
    }
}
