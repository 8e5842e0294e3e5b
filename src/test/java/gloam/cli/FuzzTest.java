package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever the options and the files are, a run ends soon in a result that other programs can read or in
 * lines
 * that the user can act on, and the same question put in another way has the same answer.
 *
 * <p>Of every kind a tenth with every build, all in the search. {@code -Dgloam.fuzz=N} runs about N cases;
 * {@code -Dgloam.fuzz.kind=KIND -Dgloam.fuzz.seed=SEED} replays
 * the case that a failure names.
 */
class FuzzTest {

    private static final String MOST_MEMORY = "-Xmx512m";
    /** Thousands of cases take a minute; only a hang takes so long, even on a busy machine. */
    private static final long MOST_S = 1200 + Integer.getInteger("gloam.fuzz", 0) / 10;

    @TempDir
    private Path folder;

    @Test
    void theFirstCasesOfEveryKindEndWell() throws Exception {
        assertAllEndWell(500);
    }

    @Tag("search")
    @Test
    void everyCaseEndsWell() throws Exception {
        assertAllEndWell(10_000);
    }

    private void assertAllEndWell(int cases) throws Exception {
        File said = folder.resolve("said").toFile();
        Process process = new ProcessBuilder(command(cases)).redirectErrorStream(true).redirectOutput(said)
                .start();
        boolean ended = process.waitFor(MOST_S, TimeUnit.SECONDS);
        process.destroyForcibly();
        String told = Files.readString(said.toPath());
        assertTrue(ended, () -> "hangs after\n" + told);
        assertEquals(0, process.waitFor(), told);
        System.out.print(told);
    }

    private List<String> command(int cases) {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin",
                "java").toString(),
                MOST_MEMORY, "-Djava.awt.headless=true", "-Dfile.encoding=UTF-8",
                "-Dsun.stdout.encoding=UTF-8", "-Dgloam.fuzz=" + cases));
        System.getProperties().stringPropertyNames().stream().filter(name -> name.startsWith("gloam.fuzz"))
                .forEach(name -> command.add("-D" + name + "=" + System.getProperty(name)));
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), FuzzRun.class.getName(),
                folder.toAbsolutePath().toString()));
        return command;
    }
}
