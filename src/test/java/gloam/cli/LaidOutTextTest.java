package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Text is laid out once, for the width at which it is read; what programs read is never broken.
 *
 * <p>The terminal is that of {@code script} (util-linux); without it the test fails rather than being left
 * out.
 */
class LaidOutTextTest {

    private static final String JOURNAL = "demo-data/journal.jsonl";
    private static final int PIPE = 100;
    private static final String WIDE_NAME = "北の高原にある静かな湖のほとりの小さな観測地点その二";
    private static final String FROM_RIGHT =
            "\u05d7\u05d5\u05e3 \u05d4\u05d9\u05dd 3 \u05d1\u05dc\u05d9\u05dc\u05d4";

    @TempDir
    private Path folder;

    @Test
    void everySheetOfAnExportIsOneLine() throws IOException {
        Run export = Run.of("journal", "export", "--journal", JOURNAL);
        List<String> rows = export.out().lines().toList();
        assertEquals(14, rows.size());
        assertTrue(rows.get(0).length() > PIPE, "a header that no terminal holds");
        int cells = rows.get(0).split(",").length;
        rows.forEach(row -> assertEquals(cells, row.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1).length,
                row));
        assertEquals(export.out(), Run.of("journal", "export", "--journal", JOURNAL, "--format", "csv")
                .out());
        for (String ending : List.of("txt", "csv")) {
            Path file = folder.resolve("sheets." + ending);
            assertEquals(0, Run.of("journal", "export", "--journal", JOURNAL, "--out", file.toString())
                    .exit());
            assertEquals(export.out(), Files.readString(file));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "plan", "nights", "sky --night 2027-02-10",
            "expose --sky-mag-arcsec2 21.4",
        "trail --azimuth 0 --altitude 41 --from 2027-02-08T21:00 --lasts 2h", "nights --stay 2"})
    void aFileHoldsWhatAPipeDoesNoWiderThanSaid(String command) throws IOException {
        for (String name : List.of(WIDE_NAME,
                "A site of many words on the far side of the plain beyond the river", FROM_RIGHT)) {
            Path trip = tripNamed(name);
            Path file = folder.resolve("report.txt");
            Run run = Run.of(Stream.concat(Arrays.stream(command.split(" ")),
                    Stream.of("--trip", trip.toString(), "--out", file.toString())).toList());
            assertEquals(0, run.exit(), run.err());
            assertEquals(run.out(), Files.readString(file));
            run.out().lines().forEach(line -> assertTrue(columns(line) <= PIPE, columns(line) + ": " + line));
        }
    }

    /** Every closing time stands where that of the first row does, whatever stands beside it. */
    @Test
    void columnsStandUnderOneAnotherInEveryWriting() throws IOException {
        for (String name : List.of(WIDE_NAME, FROM_RIGHT)) {
            List<String> rows = Run.of("nights", "--trip", tripNamed(name).toString(), "--stay", "2",
                    "--all").out()
                    .lines()
                    .filter(line -> line.matches(" +\\d+  \\w{3} .* \\d\\.\\d\\d\\b.*")).toList();
            assertTrue(rows.size() > 10, "rows");
            assertEquals(2, rows.stream()
                    .map(row -> columns(row.replaceFirst("(.* \\d\\.\\d\\d)(?!\\d).*", "$1"))).distinct()
                    .count(), "stays and nights are two tables: " + rows);
        }
    }

    @Test
    void aNameFromRightToLeftTurnsNothingBesideIt() throws IOException {
        Path trip = tripNamed(FROM_RIGHT);
        String apart = "\u2068" + FROM_RIGHT + "\u2069";
        String text = Run.of("plan", "--trip", trip.toString()).out();
        assertTrue(text.contains(", " + apart + " (times in Europe/Madrid)"), text);
        assertTrue(Run.of("plan", "--trip", trip.toString(), "--format", "html").out()
                .contains("<bdi>" + FROM_RIGHT + "</bdi>"));
        assertTrue(Run.of("plan", "--trip", trip.toString(), "--format", "svg").out().contains(apart));
        for (String format : List.of("json", "ics")) {
            String out = Run.of("plan", "--trip", trip.toString(), "--format", format).out()
                    .replace("\r\n ", "");
            assertTrue(out.contains(FROM_RIGHT) && !out.contains("\u2068"), format);
        }
        Run wrong = Run.of("plan", "--trip", trip.toString(), "--site", FROM_RIGHT + "?");
        assertEquals("site \"" + apart + "?\" is not in the trip; did you mean \"" + apart + "\"? (--site)",
                wrong.err().lines().findFirst().orElseThrow());
    }

    /** The same rows, with no word less: the table gives way, no row is cut. */
    @ParameterizedTest
    @ValueSource(ints = {100, 80})
    void aNarrowTerminalGetsTheSameTable(int columns) throws Exception {
        List<String> usual = Run.real(List.of("plan", "--trip", "demo-data/trip.yaml")).out().lines()
                .toList();
        List<String> narrow = onTerminal(columns, "plan --trip demo-data/trip.yaml").lines().toList();
        narrow.forEach(line -> assertTrue(columns(line) <= columns, line));
        String row = " +(\\w{3} )?\\d\\d:\\d\\d +(\\w{3} )?\\d\\d:\\d\\d .*(\\d|arcs|mm \\S)";
        assertEquals(8, usual.stream().filter(line -> line.matches(row)).count(), String.join("\n", usual));
        assertEquals(8, narrow.stream().filter(line -> line.matches(row)).count(), String.join("\n", narrow));
        List<String> missing = new ArrayList<>(words(usual));
        words(narrow).forEach(missing::remove);
        assertEquals(List.of(), missing);
    }

    /** What no column has room for stands under its row. */
    @Test
    void aVeryNarrowTerminalGetsTheRestUnderEachRow() throws Exception {
        String narrow = onTerminal(40, "plan --trip demo-data/trip.yaml");
        narrow.lines().forEach(line -> assertTrue(columns(line) <= 40, line));
        assertEquals(8, narrow.lines().filter(line -> line.matches("      \\d:\\d\\d h:min, az .*")).count(),
                narrow);
    }

    @Test
    void aTerminalGetsMachineFormatsUnbroken() throws Exception {
        List<String> rows = onTerminal(60, "journal export --journal " + JOURNAL).lines().toList();
        assertEquals(Run.of("journal", "export", "--journal", JOURNAL).out().lines().toList(), rows);
    }

    private static List<String> words(List<String> lines) {
        return lines.stream().flatMap(line -> Stream.of(line.split("[^\\p{L}\\p{N}]+")))
                .filter(word -> !word.isEmpty()).toList();
    }

    /** The trip of the demo with another name for a site, shortened to five nights. */
    private Path tripNamed(String name) throws IOException {
        Files.write(folder.resolve("skyline-loma.csv"),
                Files.readAllBytes(Path.of("demo-data/skyline-loma.csv")));
        return Files.writeString(folder.resolve("trip.yaml"), Files.readString(Path.of("demo-data/trip.yaml"))
                .replace("to: 2027-02-17", "to: 2027-02-12").replace("Loma Callada", name)
                .replace("Mars draws a level line", name + " II"));
    }

    /** Columns of a terminal: two for ideographs and kana, none for marks and for what sets writing apart. */
    private static int columns(String line) {
        return line.codePoints().map(point -> point >= 0x3040 && point <= 0x9FFF ? 2
                : Character.getType(point) == Character.FORMAT
                || Character.getType(point) == Character.NON_SPACING_MARK ? 0 : 1).sum();
    }

    private String onTerminal(int columns, String command) throws Exception {
        Path typescript = folder.resolve("typescript");
        String java = String.join(" ", Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp", System.getProperty("java.class.path"),
                "gloam.Main");
        Process process = new ProcessBuilder("script", "-qec", "COLUMNS=" + columns + " " + java + " "
                + command + " 2>/dev/null",
                typescript.toString()).redirectErrorStream(true).redirectInput(Path.of("/dev/null").toFile())
                .start();
        String shown = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(10, TimeUnit.MINUTES), "hangs");
        assertEquals(0, process.exitValue(), shown);
        return shown.replace("\r\n", "\n").replace("^D\b\b", "");
    }
}
