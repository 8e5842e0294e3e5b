package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.frame.SheetMaker;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** Scans coded by curves of their own: what trails and a step wedge show of them. */
class ScanCurveTest extends JournalOfOneScan {

    private static final double[] TURNED = {2.15, 1.85, 1.55, 1.25, 0.95, 0.65, 0.35, 0.05};
    private static final String STEPS = " --wedge-densities 0.05,0.35,0.65,0.95,1.25,1.55,1.85,2.15";

    private JsonNode read(double gamma, double[] wedge, String options) throws IOException {
        SheetMaker maker = maker();
        maker.skyStops = -1.5;
        maker.doublesMag = 6;
        maker.border = Math.pow(10, -0.12);
        maker.wedge = wedge;
        maker.gamma = gamma;
        add(170, 40, maker.openings);
        return json(maker, options);
    }

    /** A scanner that codes by another power than 2.2 multiplies densities by 2.2 over that. */
    @Tag("search")
    @Test
    void theTrailsShowTheContrastOfTheScan() throws IOException {
        JsonNode hard = read(1.9, new double[0], "");
        JsonNode flat = read(2.5, new double[0], "");
        assertEquals(2.2 / 1.9, number(hard, "/drawn/scanContrast"),
                2 * number(hard, "/drawn/scanContrastSd"));
        assertEquals(2.2 / 2.5, number(flat, "/drawn/scanContrast"),
                2 * number(flat, "/drawn/scanContrastSd"));
        assertTrue(number(hard, "/drawn/scanContrast") > number(flat, "/drawn/scanContrast") + 0.05);
        assertEquals(-1.5, number(hard, "/tone/toneStops"), 2 * number(hard, "/tone/errorStops"));
        assertEquals(-1.5, number(flat, "/tone/toneStops"), 2 * number(flat, "/tone/errorStops"));
    }

    /** Its dark end lies right; left it lies on the many scans of {@link ReadAccuracyTest}. */
    @Test
    void aWedgeShowsTheCurve() throws IOException {
        JsonNode found = read(2.6, TURNED, "--wedge 10,97,80,2" + STEPS);
        assertEquals(-1.5, number(found, "/tone/toneStops"), 0.15);
        assertTrue(number(found, "/tone/errorStops") < 0.2, found.get("tone").toString());
        assertEquals(1, number(found, "/drawn/scanContrast"), 0.04);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "--wedge 10,97,80,2 | --wedge needs the densities of its steps; add --wedge-densities 0.05,0.20,…",
        "--wedge-densities 0.05,0.2,0.35 | --wedge-densities needs the place of the wedge; add --wedge "
                + "X,Y,W,H",
        "--wedge 10,97,80 --wedge-densities 1 | \"10,97,80\" is no part of a scan; give left edge, upper "
                + "edge, width and height in percent, such as 10,8,80,76 (--wedge)",
        "--wedge 10,97,80,2 --wedge-densities dark | \"dark\" is no list of densities; give those of all "
                + "steps, the lightest first, such as 0.05,0.20,0.35 (--wedge-densities)",
        "--wedge 10,97,80,2 --wedge-densities 0.1,0.5,0.4 | the wedge's densities do not grow from step to "
                + "step; give the lightest first, such as 0.05,0.20,0.35 (--wedge-densities)",
        "--wedge 10,90,80,5 --wedge-densities 0.1,0.5,0.9 | the wedge's steps do not grow darker one by one; "
                + "check --wedge X,Y,W,H and the number of densities, 3 (even.png)",
        "--wedge 10,90,1,1 --wedge-densities 0.1,0.5,0.9 | a step of the wedge is 2 pixels wide, less "
                + "than 8; scan it finer, or check --wedge (even.png)"})
    void whatIsNoWedgeIsRefused(String options, String error) throws IOException {
        add(170, 40, maker().openings);
        Path even = folder.resolve("even.png");
        ImageIO.write(new BufferedImage(600, 600, BufferedImage.TYPE_BYTE_GRAY), "png", even.toFile());
        Run run = read(even, "--entry 1 " + options);
        assertEquals(2, run.exit(), run.out());
        assertEquals(error.replace("even.png", even.toString()), run.err().lines().findFirst().orElseThrow());
    }
}
