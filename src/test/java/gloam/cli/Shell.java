package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.Main;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/**
 * What a line of bash came to in which {@code gloam} is the program.
 *
 * <p>The line stands in a file, since Java itself could not pass on text that its own locale has not.
 *
 * @param exit the exit code
 * @param out  standard output
 * @param err  standard error
 */
record Shell(int exit, String out, String err) {

    private static final String JAVA = Path.of(System.getProperty("java.home"), "bin", "java")
            + " -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:-UsePerfData -cp '"
            + System.getProperty("java.class.path") + "' " + Main.class.getName();

    /** Runs a line in a folder. */
    static Shell in(Path folder, String line) throws Exception {
        Path script = Files.createTempFile("gloam", ".sh");
        Path err = Files.createTempFile("gloam", ".err");
        try {
            Files.writeString(script, "gloam() { " + JAVA + " \"$@\"; }\n" + line + "\n");
            Process process = new ProcessBuilder("bash", script.toString()).directory(folder.toFile())
                    .redirectInput(Path.of("/dev/null").toFile()).redirectError(err.toFile()).start();
            String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertTrue(process.waitFor(10, TimeUnit.MINUTES), "hangs");
            return new Shell(process.exitValue(), out, Files.readString(err));
        } finally {
            Files.delete(script);
            Files.delete(err);
        }
    }
}
