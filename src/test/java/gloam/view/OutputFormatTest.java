package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.answer.Approaches;
import gloam.answer.ToneGuide;
import gloam.support.Places;
import gloam.units.BadInput;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OutputFormatTest {

    private static final Report APPROACHES =
            ApproachesReport.of(new Approaches(Places.MID_NORTH, List.of()), Instant.EPOCH);
    private static final Report GUIDE = JournalGuideReport.of(ToneGuide.all(), Instant.EPOCH);

    @ParameterizedTest
    @CsvSource({"plan.txt, TEXT", "a.b/plan.JSON, JSON", "plan.csv, CSV", "plan.svg, SVG", "plan.png, PNG",
            "plan.ics, ICS",
        "plan.html, HTML"})
    void aFilesEndingNamesItsFormat(String file, OutputFormat format) {
        assertEquals(format, OutputFormat.of(Path.of(file)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "plan.pdf", "svg", "plan.svg.gz", "png"})
    void otherEndingsAreRefused(String file) {
        assertThrows(BadInput.class, () -> OutputFormat.of(Path.of(file)));
    }

    @Test
    void formatsAreNamedAsOptionsWriteThem() {
        for (OutputFormat format : OutputFormat.values()) {
            if (format.text()) {
                assertEquals(format, OutputFormat.named(format.label()));
            } else {
                assertThrows(BadInput.class, () -> OutputFormat.named(format.label()));
            }
        }
        assertEquals(List.of(OutputFormat.PNG), Arrays.stream(OutputFormat.values())
                .filter(format -> !format.text()).toList());
        assertThrows(BadInput.class, () -> OutputFormat.named("JSON"));
    }

    @Test
    void aReportHasTheFormatsThatSuitIt() {
        for (OutputFormat format : List.of(OutputFormat.TEXT, OutputFormat.JSON, OutputFormat.HTML)) {
            format.check(APPROACHES);
            format.check(GUIDE);
        }
        OutputFormat.SVG.check(GUIDE);
        for (OutputFormat format : List.of(OutputFormat.PNG, OutputFormat.ICS, OutputFormat.CSV,
                OutputFormat.SVG)) {
            assertThrows(BadInput.class, () -> format.check(APPROACHES));
        }
    }

    @Test
    void eachFormatIsWrittenAsItself() throws IOException {
        for (OutputFormat format : List.of(OutputFormat.TEXT, OutputFormat.JSON, OutputFormat.HTML,
                OutputFormat.SVG)) {
            StringBuilder text = new StringBuilder();
            format.render(GUIDE, new Origin("gloam 1", List.of()), 100, text);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            format.write(GUIDE, new Origin("gloam 1", List.of()), bytes);
            assertEquals(text.toString(), bytes.toString(StandardCharsets.UTF_8));
            String start = format == OutputFormat.JSON ? "{" : format == OutputFormat.HTML ? "<!DOCTYPE html>"
                    : format == OutputFormat.SVG ? "<" : "";
            assertTrue(text.toString().startsWith(start), text::toString);
        }
    }

    @Test
    void allAreOfferedInWords() {
        for (OutputFormat format : OutputFormat.values()) {
            assertEquals(format.text(), (", " + OutputFormat.texts().replace(" or ", ", ") + ",")
                    .contains(", " + format.label() + ","), OutputFormat.texts());
        }
        assertTrue(OutputFormat.endings(".").endsWith(".html") && OutputFormat.endings(".")
                .contains(".txt, "));
    }
}
