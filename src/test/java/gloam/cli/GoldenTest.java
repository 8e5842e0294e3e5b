package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whole outputs as they were approved: {@code golden/CASE/args}, an argument a line, gives {@code exit},
 * {@code out} and {@code err}.
 *
 * <p>They say that something changed, not what is right. After a look, {@code mvn test -Dtest=GoldenTest
 * -Dgolden.update=true} rewrites them, and the difference is reviewed like code.
 */
class GoldenTest {

    private static final Path CASES = Path.of("src/test/resources/golden");
    private static final int LEAST_CASES = 20;

    static Stream<Path> cases() throws IOException {
        try (Stream<Path> folders = Files.list(CASES)) {
            return folders.filter(Files::isDirectory).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void outputStaysAsApproved(Path folder) throws IOException {
        List<String> args = Files.readAllLines(folder.resolve("args"));
        Run run = Run.of(args);
        if (Boolean.getBoolean("golden.update")) {
            Files.writeString(folder.resolve("exit"), run.exit() + "\n");
            Files.writeString(folder.resolve("out"), run.out());
            Files.writeString(folder.resolve("err"), run.err());
        }
        assertEquals(Files.readString(folder.resolve("err")), run.err());
        assertEquals(Files.readString(folder.resolve("out")), run.out());
        assertEquals(Files.readString(folder.resolve("exit")).strip(), String.valueOf(run.exit()));
    }

    @Test
    void textKeepsToAHundredColumns() throws IOException {
        for (Path folder : cases().toList()) {
            String out = Files.readString(folder.resolve("out"));
            if (!out.startsWith("{") && !out.startsWith("<svg")) {
                out.lines().forEach(line -> assertTrue(line.length() <= 100, () -> folder + ": " + line));
            }
        }
    }

    @Test
    void casesAreFound() throws IOException {
        assertTrue(cases().count() >= LEAST_CASES);
    }
}
