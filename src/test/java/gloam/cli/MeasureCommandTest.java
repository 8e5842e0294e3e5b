package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.frame.FrameMaker;
import gloam.support.Places;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Frames made by formulas of the test's own, measured through the command line. */
class MeasureCommandTest {

    static final String PLACE = "--place 44.2,9.7,620 --zone UTC";

    @TempDir
    Path folder;

    static FrameMaker maker() {
        FrameMaker maker = new FrameMaker(Places.at(44.2, 9.7, 620));
        maker.width = 900;
        maker.height = 600;
        return maker;
    }

    private Path file(String name, byte[] content) throws IOException {
        return Files.write(folder.resolve(name), content);
    }

    private Run run(Path frame, String options) {
        List<String> args = new ArrayList<>(List.of("measure", frame.toString()));
        args.addAll(List.of((PLACE + " " + options).strip().split("\\s+")));
        return Run.of(args);
    }

    private JsonNode json(Path frame, String options) {
        return Run.json("measure " + frame + " " + PLACE + " " + options);
    }

    static double number(JsonNode json, String path) {
        assertTrue(json.at(path).isNumber(), path + " in " + json);
        return json.at(path).doubleValue();
    }

    /** Level 118 of 255 at 10/S lx s, cos⁴ and the pupil: the maker's own formulas give the same sky back. */
    @Test
    void theSkyIsMeasuredPieceByPieceAndTheAimFoundFromTheStars() throws IOException {
        FrameMaker maker = maker();
        maker.rollDeg = -7;
        maker.landDeg = 22;
        maker.skyMag = seen -> 20.6 + 0.02 * (seen.altitude().degrees() - 40);
        JsonNode found = json(file("frame.jpg", maker.jpeg()), "").at("/frames/0");
        assertEquals(170, number(found, "/azimuthDeg"), 0.05);
        assertEquals(40, number(found, "/altitudeDeg"), 0.05);
        assertEquals(-7, number(found, "/rollDeg"), 0.1);
        assertTrue(number(found, "/starsMatched") > 60, found.at("/starsMatched").toString());
        assertTrue(number(found, "/aimErrorDeg") < 0.05);
        assertEquals(20.6, number(found, "/magArcsec2"), 0.08);
        JsonNode pieces = found.get("pieces");
        assertTrue(pieces.size() > 12, "pieces " + pieces.size());
        for (JsonNode piece : pieces) {
            double altitudeDeg = number(piece, "/altitudeDeg");
            if (altitudeDeg > 30) {
                assertEquals(20.6 + 0.02 * (altitudeDeg - 40), number(piece, "/magArcsec2"), 0.06,
                        piece.toString());
            }
        }
    }

    /** What is under the skyline of the site is no sky: 3 mag darker land would show at once. */
    /** A glow in the south-east that the model does not have is told with its direction. */
    @Test
    void aTownsGlowIsSeenAsASlope() throws IOException {
        FrameMaker maker = maker();
        maker.skyMag = seen -> 21 - 0.02 * (200 - seen.azimuth().degrees());
        JsonNode slope = json(file("frame.jpg", maker.jpeg()), "").at("/frames/0/slope");
        assertTrue(slope.get("clear").booleanValue());
        assertTrue(number(slope, "/azimuthDeg") < 155, slope.toString());
        assertTrue(number(slope, "/brighterMag") > number(slope, "/oppositeMag") + 0.6, slope.toString());
    }

    /** A lens that loses 1.5 stops in the corners is told from a sky with a slope, and corrected. */
    @Test
    void vignettingIsSeenAndCorrected() throws IOException {
        FrameMaker maker = maker();
        maker.altitudeDeg = 60;
        maker.skyMag = seen -> 21;
        maker.cornerStops = 1.5;
        Path frame = file("frame.jpg", maker.jpeg());
        JsonNode slope = json(frame, "").at("/frames/0/slope");
        assertTrue(slope.get("cornersClear").booleanValue(), slope.toString());
        assertTrue(number(slope, "/cornersMag") < -0.7, slope.toString());
        JsonNode corrected = json(frame, "--corner-stops 1.5").at("/frames/0");
        assertFalse(corrected.at("/slope/cornersClear").booleanValue());
        corrected.get("pieces").forEach(piece ->
                assertEquals(21, number(piece, "/magArcsec2"), 0.06, piece.toString()));
    }

    /**
     * A camera whose levels are 0.6 stops too bright is calibrated by one frame, and measures right after.
     */
    @Test
    void aCalibratedCameraMeasuresRight() throws IOException {
        FrameMaker maker = maker();
        maker.skyMag = seen -> 20.8;
        maker.fasterStops = 0.6;
        Path known = file("known.jpg", maker.jpeg());
        Path kept = folder.resolve("camera.json");
        assertEquals(20.8 - 0.6 * 0.7526,
                number(json(known, "--calibrate " + kept + " --sky-mag-arcsec2 20.8"),
                "/frames/0/magArcsec2"), 0.08);
        maker.skyMag = seen -> 21.3;
        maker.azimuthDeg = 30;
        JsonNode found = json(file("other.jpg", maker.jpeg()), "--calibration " + kept).at("/frames/0");
        assertEquals(21.3, number(found, "/magArcsec2"), 0.08);
        assertTrue(found.get("calibrated").booleanValue());
        assertTrue(number(found, "/errorMag") < 0.25, found.get("errorMag").toString());
        Path others = file("others.jpg", maker.tags().camera("Another").into(FrameMaker.jpeg(maker.picture(),
                0.9f)));
        Files.writeString(kept, Files.readString(kept).replace("Testkamera", "Apparat"));
        Run refused = run(others, "--calibration " + kept);
        assertEquals(2, refused.exit());
        assertTrue(refused.err().startsWith("the calibration is that of another camera, Apparat"),
                refused.err());
        assertEquals(2, run(known, "--calibrate " + kept).exit());
        Run over = run(known, "--calibrate " + known + " --sky-mag-arcsec2 20.8");
        assertTrue(over.err().contains("it is read by this command"), over.err());
    }

    /** The sky turns by a quarter of a degree a minute: an aim that is known tells a clock 40 min fast. */
    @Test
    void aKnownAimShowsTheClocksError() throws IOException {
        FrameMaker maker = maker();
        Path frame = file("frame.jpg", maker.tags().without(0x9003).openedAt(maker.openedAt.plusSeconds(2400))
                .into(FrameMaker.jpeg(maker.picture(), 0.92f)));
        JsonNode found = json(frame, "--azimuth 170 --altitude 40").at("/frames/0");
        assertEquals(2400, number(found, "/clockAheadS"), 60);
        assertTrue(run(frame, "--azimuth 170 --altitude 40").out()
                .contains("the camera's clock is 40 min fast"));
        assertTrue(json(file("right.jpg", maker.jpeg()), "--azimuth 170 --altitude 40")
                .at("/frames/0/clockAheadS").isNull());
    }

    @Test
    void whatCannotBeMeasuredIsRefusedInOneLine() throws IOException {
        refused(Run.of(("measure " + PLACE).split(" ")), "no frame given; name an image");
        FrameMaker maker = maker();
        Path frame = file("frame.jpg", maker.jpeg());
        refused(run(frame, "--at 2027-06-08T12:00"), "the Sun is up while the shutter is open, from "
                + "2027-06-08T12:00 on; check the camera's clock, --at and the place");
        refused(run(frame, "--azimuth 20 --altitude 40"),
                "the stars in the frame are not those of where it is "
                + "said to point, but those around azimuth 170°, altitude 40°");
        byte[] bare = FrameMaker.jpeg(maker.picture(), 0.92f);
        refused(run(file("bare.jpg", bare), ""), "the frame does not state its f-number; add --f-number N");
        refused(run(file("noiso.jpg", maker.tags().without(0x8827).into(bare)), ""),
                "the frame does not state its ISO setting; add --iso N");
        refused(run(file("nofield.jpg", maker.tags().without(0xA405).into(bare)), ""),
                "the frame does not state how much it sees; add --focal-length MM and --frame WxH");
        refused(run(file("notime.jpg", maker.tags().without(0x9003).into(bare)), ""),
                "the frame does not state its time; add --at INSTANT");
        maker.iso = 3;
        refused(run(file("black.jpg", maker.jpeg()), "--azimuth 170 --altitude 40"), "the frame is black");
        maker.iso = 50_000;
        maker.skyMag = seen -> 17;
        refused(run(file("white.jpg", maker.jpeg()), "--azimuth 170 --altitude 40"),
                "the frame is overexposed");
        maker = maker();
        maker.faintestMag = -10;
        refused(run(file("cloud.jpg", maker.jpeg()), ""), "nothing shows where the frame points");
        refused(run(folder.resolve("cloud.jpg"), "--azimuth 170 --altitude -60"), "the frame shows no sky");
        JsonNode given = json(folder.resolve("cloud.jpg"), "--azimuth 170 --altitude 40 --roll 2")
                .at("/frames/0");
        assertEquals(2, number(given, "/rollDeg"), 1e-6);
        assertTrue(given.get("aimErrorDeg").isNull());
        assertEquals(21, number(given, "/magArcsec2"), 0.08);
    }

    private static void refused(Run run, String beginning) {
        assertEquals(2, run.exit(), run.out());
        assertTrue(run.err().startsWith(beginning), run.err());
        assertEquals(2, run.err().lines().count(), run.err());
    }

    /** A frame without tags is measured by options alone. */
    @Test
    void optionsStandForTagsThatAreMissing() throws IOException {
        FrameMaker maker = maker();
        JsonNode found = json(file("bare.jpg", FrameMaker.jpeg(maker.picture(), 0.92f)),
                "--f-number 2.8 --iso 3200 "
                + "--exposure 10s --focal-length 24 --frame 36x24 --at 2027-02-08T21:30Z").at("/frames/0");
        assertEquals(170, number(found, "/azimuthDeg"), 0.05);
        assertEquals(21, number(found, "/magArcsec2"), 0.08);
    }

    /** An index that is the standard's is known better than one that may be recommended, a curve worse. */
    @Test
    void theErrorSaysWhatTheCameraSays() throws IOException {
        FrameMaker maker = maker();
        byte[] bare = FrameMaker.jpeg(maker.picture(), 0.92f);
        double output = number(json(file("a.jpg", maker.tags().index(1).into(bare)), ""),
                "/frames/0/errorMag");
        double usual = number(json(file("b.jpg", maker.tags().into(bare)), ""), "/frames/0/errorMag");
        double curve = number(json(file("c.jpg", maker.tags().rendered().into(bare)), ""),
                "/frames/0/errorMag");
        assertTrue(output < usual - 0.02 && usual < curve - 0.05, output + " " + usual + " " + curve);
        assertTrue(usual > 0.25 && usual < 0.6, "" + usual);
    }

    /** Several frames make one list, whose measurements bear their shared error together. */
    @Test
    void severalFramesMakeOneList() throws IOException {
        FrameMaker maker = maker();
        Path one = file("one.jpg", maker.jpeg());
        maker.azimuthDeg = 60;
        Path two = file("two.jpg", maker.jpeg());
        JsonNode both = Run.json("measure " + one + " " + two + " " + PLACE);
        assertEquals(List.of(one.toString(), two.toString()), StreamSupport.stream(both.get("frames")
                .spliterator(), false).map(frame -> frame.get("name").asString()).toList());
        assertEquals(6, both.get("sky").size());
        double alone = number(json(one, ""), "/sky/0/errorMag");
        assertEquals(Math.sqrt(2), number(both, "/sky/0/errorMag") / alone, 0.1);
    }
}
