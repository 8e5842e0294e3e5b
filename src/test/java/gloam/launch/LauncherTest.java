package gloam.launch;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The folder that the build lays out, started where it stands and where it does not belong. */
@Tag("installed")
class LauncherTest {

    private static final Path BUILT = Path.of("target", "gloam").toAbsolutePath();
    private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");
    private static final String VERSION = "gloam 0.1.0\n";

    @TempDir
    private Path folder;
    private Path moved;

    @BeforeEach
    void copyTheFolder() throws IOException {
        moved = folder.resolve("a place with blanks é");
        try (Stream<Path> files = Files.walk(BUILT)) {
            for (Path file : files.toList()) {
                Files.copy(file, moved.resolve(BUILT.relativize(file).toString()),
                        StandardCopyOption.COPY_ATTRIBUTES);
            }
        }
    }

    @Test
    void whereItWasBuilt() throws Exception {
        assertSaysVersion(run(BUILT.resolve("bin/gloam"), "--version"));
    }

    @Test
    void theArchiveFitsTheJarWhereItWasBuilt() throws Exception {
        assertSaysVersion(run(JAVA, "-Xshare:on", "-XX:+UseSerialGC", "-XX:SharedArchiveFile="
                + BUILT.resolve("gloam.jsa"), "-jar", BUILT.resolve("gloam.jar").toString(), "--version"));
    }

    @Test
    void copiedElsewhereWithItsArchiveStale() throws Exception {
        assertSaysVersion(run(moved.resolve("bin/gloam"), "--version"));
    }

    @Test
    void withoutItsArchive() throws Exception {
        Files.delete(moved.resolve("gloam.jsa"));
        assertSaysVersion(run(moved.resolve("bin/gloam"), "--version"));
    }

    @Test
    void withAnArchiveOfRubbish() throws Exception {
        Files.delete(moved.resolve("gloam.jsa"));
        Files.writeString(moved.resolve("gloam.jsa"), "no archive\n".repeat(10_000));
        assertSaysVersion(run(moved.resolve("bin/gloam"), "--version"));
    }

    @Test
    void withAJarNewerThanItsArchive() throws Exception {
        Files.setLastModifiedTime(moved.resolve("gloam.jar"), FileTime.from(Instant.now()));
        assertSaysVersion(run(moved.resolve("bin/gloam"), "--version"));
    }

    @Test
    void throughALinkOfALink() throws Exception {
        Path link = Files.createSymbolicLink(folder.resolve("link"), moved.resolve("bin/gloam"));
        Path again = Files.createSymbolicLink(folder.resolve("again"), link.getFileName());
        assertSaysVersion(run(again, "--version"));
    }

    @Test
    void doesAWholeCommandAndPassesItsExitCodeOn() throws Exception {
        Said plan = run(moved.resolve("bin/gloam"), "plan", "--trip",
                Path.of("demo-data", "trip.yaml").toAbsolutePath().toString());
        Said wrong = run(moved.resolve("bin/gloam"), "plam");
        assertAll(() -> assertEquals("", plan.err), () -> assertEquals(0, plan.exit),
                () -> assertTrue(plan.out.contains("8 of 8 sheets planned"), plan.out),
                () -> assertEquals(2, wrong.exit),
                () -> assertTrue(wrong.err.startsWith("unknown command \"plam\"; did you mean plan?"),
                wrong.err));
    }

    @Test
    void withTheJarAlone() throws Exception {
        assertSaysVersion(run(JAVA, "-jar", moved.resolve("gloam.jar").toString(), "--version"));
    }

    @Test
    void withoutJavaSaysWhatToDo() throws Exception {
        Said said = run(Map.of("JAVA_HOME", folder.toString()), moved.resolve("bin/gloam"), "--version");
        assertAll(() -> assertEquals(5, said.exit), () -> assertEquals("no Java at " + folder
                + "/bin/java; install Java 17 or newer, or set JAVA_HOME to the folder it stands in\n",
                said.err));
    }

    /**
     * Every Java installed beside the one that runs the tests, that one too, with the archive that one made.
     */
    @Test
    void onEveryJavaOfTheMachine() throws Exception {
        for (Path java : javas()) {
            assertSaysVersion(run(Map.of("JAVA_HOME", java.toString()), BUILT.resolve("bin/gloam"),
                    "--version"));
        }
    }

    @Test
    void builtByEveryJavaOfTheMachine() throws Exception {
        for (Path java : javas()) {
            Path target = Files.createTempDirectory(folder, "target");
            Files.copy(BUILT.resolveSibling("gloam.jar"), target.resolve("gloam.jar"));
            assertEquals(new Said(0, "", ""),
                    run(Map.of(), Path.of("").toAbsolutePath(), java.resolve("bin/java"),
                    "src/launch/LayOut.java", target.toString()), java.toString());
            assertSaysVersion(run(java.resolve("bin/java"), "-Xshare:on", "-XX:+UseSerialGC",
                    "-XX:SharedArchiveFile="
                    + target.resolve("gloam/gloam.jsa"), "-jar", target.resolve("gloam/gloam.jar").toString(),
                    "--version"));
        }
    }

    /** The script holds the text, since Java itself could not pass it on where its own locale is plain. */
    @ParameterizedTest
    @ValueSource(strings = {"C", "POSIX", "en_US.ISO-8859-1", "xx_YY.UTF-8"})
    void textIsUtf8InEveryLocale(String locale) throws Exception {
        Path script = Files.writeString(folder.resolve("script"), """
                set -e
                mkdir -p mañana; cp "$2"/*.csv "$2/trip.yaml" mañana; mv mañana/trip.yaml mañana/mañana.yaml
                mv mañana/skyline-loma.csv mañana/skyline-夜.csv
                sed -i s/skyline-loma/skyline-夜/ mañana/mañana.yaml
                "$1" check --trip mañana/mañana.yaml --out mañana/é.json >/dev/null
                "$1" journal add --journal mañana/夜.jsonl --sky-mag-arcsec2 21 --iso 100 --f-number 11 \
                    --open 2026-02-08T21:00Z/1h --note 'mañana 夜' >/dev/null
                grep -c 'Loma Callada' mañana/é.json
                grep -o 'mañana 夜' mañana/夜.jsonl
                """);
        assertEquals(new Said(0, "1\nmañana 夜\n", ""), run(Map.of("LC_ALL", locale), Path.of("/bin/sh"),
                script.toString(), BUILT.resolve("bin/gloam").toString(),
                Path.of("demo-data").toAbsolutePath().toString()));
    }

    /** Homes of the Javas from 17 on that stand beside the one running this. */
    private static List<Path> javas() throws IOException {
        try (Stream<Path> homes = Files.list(Path.of(System.getProperty("java.home")).toRealPath()
                .getParent())) {
            return homes.filter(home -> !Files.isSymbolicLink(home)
                    && Files.exists(home.resolve("bin/javac")))
                    .filter(LauncherTest::newEnough).sorted().toList();
        }
    }

    private static boolean newEnough(Path home) {
        try {
            Matcher version = Pattern.compile("JAVA_VERSION=\"(\\d+)")
                    .matcher(Files.readString(home.resolve("release")));
            return version.find() && Integer.parseInt(version.group(1)) >= 17;
        } catch (IOException unknown) {
            return false;
        }
    }

    private static void assertSaysVersion(Said said) {
        assertEquals(new Said(0, VERSION, ""), said);
    }

    private Said run(Path program, String... arguments) throws IOException, InterruptedException {
        return run(Map.of(), program, arguments);
    }

    private Said run(Map<String, String> environment, Path program, String... arguments)
            throws IOException, InterruptedException {
        return run(environment, folder, program, arguments);
    }

    private Said run(Map<String, String> environment, Path directory, Path program, String... arguments)
            throws IOException, InterruptedException {
        File out = folder.resolve("out").toFile();
        File err = folder.resolve("err").toFile();
        ProcessBuilder builder = new ProcessBuilder(Stream.concat(Stream.of(program.toString()),
                Stream.of(arguments)).toList()).directory(directory.toFile()).redirectOutput(out)
                .redirectError(err);
        builder.environment().remove("JAVA_HOME");
        builder.environment().putAll(environment);
        int exit = builder.start().waitFor();
        return new Said(exit, Files.readString(out.toPath(), StandardCharsets.UTF_8),
                Files.readString(err.toPath(), StandardCharsets.UTF_8));
    }

    private record Said(int exit, String out, String err) {
    }
}
