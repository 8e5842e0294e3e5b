package gloam.launch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What CI runs, with stand-ins for Maven and Java that note what they are asked. */
class CiRunTest {

    private static final List<String> FOUND = List.of("bash", "dirname", "tee", "grep");
    private static final List<String> ALL = List.of("mvn -B -ntp -q -DskipTests package",
            "java -jar target/gloam.jar plan --trip demo-data/trip.yaml", "mvn -B -ntp test -Pinstalled",
            "mvn -B -ntp test", "mvn -B -ntp test -Psearch");

    @TempDir
    private Path folder;
    private Path bin;

    @BeforeEach
    void layOut() throws IOException {
        bin = Files.createDirectories(folder.resolve("bin"));
        Files.createDirectories(folder.resolve("target"));
        Files.createDirectories(folder.resolve(".ci"));
        Files.copy(Path.of(".ci/run"), folder.resolve(".ci/run"), StandardCopyOption.COPY_ATTRIBUTES);
        for (String program : FOUND) {
            Path script = Files.writeString(bin.resolve(program), "#!/bin/bash\nexec /usr/bin/" + program
                    + " \"$@\"\n");
            assertTrue(script.toFile().setExecutable(true));
        }
        program("mvn", 0);
        program("java", 0);
    }

    @Test
    void withABrowserEveryTestRuns() throws Exception {
        program("chromium", 0);
        program("node", 0);
        assertEquals(0, run());
        assertEquals(ALL, asked());
    }

    @Test
    void withoutABrowserEveryOtherTestRunsAndWhatIsMissingIsTold() throws Exception {
        program("apt-get", 100);
        assertEquals(1, run());
        List<String> expected = new ArrayList<>(ALL);
        expected.add(2, "apt-get update -qq");
        expected.set(3, "mvn -B -ntp test -Pinstalled -Dtest.excludedGroups=browser");
        assertEquals(expected, asked());
        assertTrue(said().endsWith("every other test has run, but not those of a page in a browser; "
                + "install chromium nodejs\n"),
                said());
    }

    @Test
    void aTestThatFailsIsNotForgiven() throws Exception {
        program("mvn", 1);
        assertEquals(1, run());
        assertEquals(ALL.subList(0, 1), asked());
    }

    private void program(String name, int exit) throws IOException {
        Path program = bin.resolve(name);
        Files.writeString(program, "#!/bin/bash\necho " + name + " \"$@\" >> " + folder + "/asked\nexit "
                + exit + "\n");
        assertTrue(program.toFile().setExecutable(true));
    }

    private int run() throws Exception {
        ProcessBuilder builder = new ProcessBuilder(folder.resolve(".ci/run").toString())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(folder.resolve("said").toFile());
        builder.environment().put("PATH", bin.toString());
        return builder.start().waitFor();
    }

    private List<String> asked() throws IOException {
        return Files.readAllLines(folder.resolve("asked"), StandardCharsets.UTF_8);
    }

    private String said() throws IOException {
        return Files.readString(folder.resolve("said"), StandardCharsets.UTF_8);
    }
}
