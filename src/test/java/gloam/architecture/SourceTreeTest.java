package gloam.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the source files themselves must keep to. */
class SourceTreeTest {

    private static final Path MAIN = Path.of("src/main/java/gloam");
    private static final Path TESTS = Path.of("src/test/java/gloam");
    private static final Path BENCHMARKS = Path.of("src/jmh");
    private static final int MOST_LINES = 250;
    private static final int MOST_COLUMNS = 110;
    private static final String TEXT_BLOCK = "\"\"\"";
    private static final int LEAST_FILES = 30;

    @Test
    void everyPackageSaysWhatItIsFor() {
        assertNone(sources().map(Path::getParent).distinct()
                .filter(folder -> !Files.exists(folder.resolve("package-info.java"))),
                "without package-info.java");
    }

    @Test
    void noFileIsLongerThanAReaderCanHold() {
        assertNone(sources().filter(file -> lines(file).size() > MOST_LINES),
                "of more than " + MOST_LINES + " lines");
    }

    /**
     * Those of tests too. What a text block holds is as long as it must be, and a literal that cannot be
     * parted.
     */
    @Test
    void linesFitTheColumns() {
        assertNone(Stream.of(MAIN, TESTS, BENCHMARKS).flatMap(SourceTreeTest::sources)
                .flatMap(file -> wide(file).stream()), "with lines of more than " + MOST_COLUMNS
                + " columns");
    }

    private static List<String> wide(Path file) {
        List<String> wide = new ArrayList<>();
        boolean inBlock = false;
        for (String line : lines(file)) {
            boolean opensOrCloses = (line.length() - line.replace(TEXT_BLOCK, "").length()) / 3 % 2 == 1;
            boolean code = !inBlock && !opensOrCloses && !line.matches("\\s*(\\+ |\\w+\\()*\"[^ ]*\"?[^ ]*");
            if (code && line.codePointCount(0, line.length()) > MOST_COLUMNS) {
                wide.add(file + ": " + line.strip());
            }
            inBlock ^= opensOrCloses;
        }
        return wide;
    }

    @Test
    void everyFileIsPlainTextWithoutTabsAndTrailingBlanks() {
        assertNone(sources().filter(file -> lines(file).stream()
                .anyMatch(line -> line.matches(".*(\\t.*|\\s)"))),
                "with tabs or blanks at a line's end");
    }

    @Test
    void theSourcesAreFound() {
        assertTrue(sources().count() >= LEAST_FILES);
    }

    private static void assertNone(Stream<?> bad, String fault) {
        assertEquals(List.of(), bad.toList(), "files or folders " + fault);
    }

    private static Stream<Path> sources() {
        return sources(MAIN);
    }

    private static Stream<Path> sources(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".java")).sorted().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
