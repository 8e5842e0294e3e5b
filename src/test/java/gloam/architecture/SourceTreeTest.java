package gloam.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the source files themselves must keep to. */
class SourceTreeTest {

    private static final Path MAIN = Path.of("src/main/java/gloam");
    private static final int MOST_LINES = 250;
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

    private static void assertNone(Stream<Path> bad, String fault) {
        assertEquals(List.of(), bad.toList(), "files or folders " + fault);
    }

    private static Stream<Path> sources() {
        try (Stream<Path> files = Files.walk(MAIN)) {
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
