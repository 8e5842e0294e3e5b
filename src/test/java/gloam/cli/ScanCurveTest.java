package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.frame.SheetMaker;
import gloam.support.Places;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Scans coded by curves of their own: what trails and a step wedge show of them. */
class ScanCurveTest {

    private static final String WEDGE = "--wedge 10,97,80,2 --wedge-densities ";
    private static final String DENSITIES = "0.05,0.35,0.65,0.95,1.25,1.55,1.85,2.15";

    @TempDir
    Path folder;

    @BeforeEach
    void anEntry() throws IOException {
        Files.writeString(folder.resolve("trip.yaml"), JournalReadTest.TRIP.replace("80x80", "80x60"));
        SheetMaker.Open open = maker(2.2).openings.get(0);
        Run.printed("journal add --azimuth 170 --altitude 40 --open " + open.from() + "/90m" + files());
    }

    private static SheetMaker maker(double gamma) {
        SheetMaker maker = new SheetMaker(Places.at(44.2, 9.7, 620));
        maker.heightMm = 60;
        maker.width = 750;
        maker.height = 600;
        maker.skyStops = -1.5;
        maker.doublesMag = 6;
        maker.border = Math.pow(10, -0.12);
        maker.gamma = gamma;
        return maker;
    }

    private static SheetMaker besideWedge(double gamma) {
        SheetMaker maker = maker(gamma);
        maker.wedge = new double[] {0.05, 0.35, 0.65, 0.95, 1.25, 1.55, 1.85, 2.15};
        return maker;
    }

    private String files() {
        return " --journal " + folder.resolve("journal.jsonl") + " --trip " + folder.resolve("trip.yaml");
    }

    private Run read(SheetMaker maker, String options) throws IOException {
        Path scan = Files.write(folder.resolve("scan.jpg"), maker.jpeg());
        return Run.of(new ArrayList<>(List.of(("journal read " + scan + " --entry 1" + files() + " " + options)
                .strip().split("\\s+"))));
    }

    private JsonNode json(SheetMaker maker, String options) throws IOException {
        Run run = read(maker, "--format json " + options);
        assertEquals(0, run.exit(), run.err());
        return JsonMapper.shared().readTree(run.out());
    }

    private static double number(JsonNode json, String path) {
        assertTrue(json.at(path).isNumber(), path + " in " + json);
        return json.at(path).doubleValue();
    }

    /** A scanner that codes by another power than 2.2 multiplies densities by 2.2 over that. */
    @ParameterizedTest
    @ValueSource(doubles = {1.9, 2.2, 2.5})
    void theTrailsShowTheContrastOfTheScan(double gamma) throws IOException {
        JsonNode found = json(maker(gamma), "");
        assertEquals(2.2 / gamma, number(found, "/drawn/scanContrast"),
                2 * number(found, "/drawn/scanContrastSd"));
        assertEquals(-1.5, number(found, "/tone/toneStops"), 2 * number(found, "/tone/errorStops"));
    }

    @Test
    void flatterScansAreTakenForFlatter() throws IOException {
        assertTrue(number(json(maker(1.9), ""), "/drawn/scanContrast")
                > number(json(maker(2.5), ""), "/drawn/scanContrast") + 0.05);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.8, 2.6})
    void aWedgeShowsTheCurve(double gamma) throws IOException {
        JsonNode found = json(besideWedge(gamma), WEDGE + DENSITIES);
        assertEquals(-1.5, number(found, "/tone/toneStops"), 0.15);
        assertTrue(number(found, "/tone/errorStops") < 0.2, found.get("tone").toString());
        assertEquals(1, number(found, "/drawn/scanContrast"), 0.04);
    }

    /** The wedge's dark end lies left; it may lie the other way round. */
    @Test
    void aWedgeMayLieEitherWay() throws IOException {
        SheetMaker maker = besideWedge(1.8);
        double tone = number(json(maker, WEDGE + DENSITIES), "/tone/toneStops");
        for (int i = 0; i < maker.wedge.length / 2; i++) {
            double swapped = maker.wedge[i];
            maker.wedge[i] = maker.wedge[maker.wedge.length - 1 - i];
            maker.wedge[maker.wedge.length - 1 - i] = swapped;
        }
        assertEquals(tone, number(json(maker, WEDGE + DENSITIES), "/tone/toneStops"), 0.05);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "--wedge 10,97,80,2 | --wedge needs the densities of its steps; add --wedge-densities 0.05,0.20,…",
        "--wedge-densities 0.05,0.2,0.35 | --wedge-densities needs the place of the wedge; add --wedge X,Y,W,H",
        "--wedge 10,97,80 --wedge-densities 1 | \"10,97,80\" is no part of a scan; give left edge, upper edge, "
                + "width and height in percent, such as 10,8,80,76 (--wedge)",
        "--wedge 10,97,80,2 --wedge-densities dark | \"dark\" is no list of densities; give those of all steps, "
                + "the lightest first, such as 0.05,0.20,0.35 (--wedge-densities)",
        "--wedge 10,97,80,2 --wedge-densities 0.1,0.5,0.4 | the wedge's densities do not grow from step to "
                + "step; give the lightest first, such as 0.05,0.20,0.35 (--wedge-densities)"})
    void whatIsNoWedgeIsRefused(String options, String error) throws IOException {
        Run run = read(besideWedge(2.2), options);
        assertEquals(2, run.exit(), run.out());
        assertEquals(error, run.err().lines().findFirst().orElseThrow());
    }

    @Test
    void aWedgeThatIsNotThereIsRefused() throws IOException {
        Run run = read(besideWedge(2.2), "--wedge 10,1,80,2 --wedge-densities " + DENSITIES);
        assertEquals(2, run.exit(), run.out());
        assertTrue(run.err().startsWith("the wedge's steps do not grow darker one by one; check --wedge X,Y,W,H "
                + "and the number of densities, 8 ("), run.err());
        Run fine = read(besideWedge(2.2), "--wedge 10,97,1,1 --wedge-densities " + DENSITIES);
        assertEquals(2, fine.exit(), fine.out());
        assertTrue(fine.err().startsWith("a step of the wedge is less than 8 pixels wide; scan it finer, or "
                + "check --wedge ("), fine.err());
    }
}
