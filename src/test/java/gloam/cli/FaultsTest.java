package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.Main;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The world fails while the real program runs: it says so, leaves with the right code, and what was there is
 * whole.
 *
 * <p>Needs Linux's bash, env, /dev/full and /proc; without them it fails rather than being left out.
 */
class FaultsTest {

    private static final String GUIDE = "journal guide";
    private static final String NIGHTS =
            "nights --lat 41 --lon -2 --height 0 --zone UTC --from 2027-01-01 --to 2027-12-31";
    private static final String OLD = "as it was\n";
    private static final List<String> COMMANDS = List.of("plan --trip demo-data/trip-south.yaml",
            NIGHTS.replace("2027-12-31", "2027-01-03"),
            "journal fit --journal demo-data/journal.jsonl --film instant-mono-640", "plan --lat x");
    /** What each of them does on this machine. */
    private static final Map<String, Ended> HERE = new ConcurrentHashMap<>();

    @TempDir
    private Path folder;

    private record Ended(int exit, String out, String err) {
    }

    @Test
    void aFullDiskBehindStandardOutputIsTold() throws Exception {
        Ended ended = bash("gloam " + GUIDE + " > /dev/full");
        assertEquals(2, ended.exit);
        assertEquals("standard output cannot be written: No space left on device. Send it elsewhere, or use "
                + "--out FILE.\n", ended.err);
    }

    @Test
    void aReaderThatHasReadEnoughIsNoError() throws Exception {
        Ended ended = bash("gloam " + GUIDE + " | true; exit ${PIPESTATUS[0]}");
        assertEquals(new Ended(0, "", ""), ended);
        ended = bash("gloam " + NIGHTS + " --format json | head -1; exit ${PIPESTATUS[0]}");
        assertEquals(new Ended(0, "{\n", ""), ended);
    }

    /** A limit on the size of files is what a full disk is to the program. */
    @Test
    void aFullDiskLeavesTheOldFile() throws Exception {
        Path old = Files.writeString(folder.resolve("nights.json"), OLD);
        Ended ended = bash("ulimit -f 8; trap '' XFSZ; gloam " + NIGHTS + " --out " + old);
        assertEquals(2, ended.exit, ended.err);
        assertEquals("", ended.out);
        assertTrue(ended.err.startsWith("file \"" + old
                + "\" cannot be written: File too large. Choose another place (--out)\n"), ended.err);
        assertOnly(old, OLD);
    }

    @Test
    void aDeviceThatIsFullIsTold() throws Exception {
        Path full = Files.createSymbolicLink(folder.resolve("guide.txt"), Path.of("/dev/full"));
        Ended ended = bash("gloam " + GUIDE + " --out " + full);
        assertEquals(2, ended.exit, ended.err);
        assertTrue(ended.err.startsWith("file \"" + full + "\" cannot be written: No space left on device."),
                ended.err);
    }

    /** Nobody, root neither, makes files in /proc or under a file. */
    @ParameterizedTest
    @ValueSource(strings = {"/proc/guide.txt", "/proc/version/guide.txt"})
    void aFolderThatTakesNoFileIsTold(String file) throws Exception {
        Ended ended = bash("gloam " + GUIDE + " --out " + file);
        assertEquals(2, ended.exit, ended.err);
        assertEquals("", ended.out);
        assertTrue(ended.err.startsWith("file \"" + file + "\" cannot be written: "), ended.err);
        assertEquals(2, ended.err.lines().count());
    }

    @Test
    void aJournalThatCannotBeWrittenIsTold() throws Exception {
        Ended ended = bash("gloam journal add --journal /proc/j.jsonl --sky-mag-arcsec2 21 --iso 100 "
                + "--f-number 11 --open 2026-02-08T21:00Z/2026-02-08T22:00Z");
        assertEquals(2, ended.exit, ended.err);
        assertTrue(ended.err.startsWith("nothing was added: /proc/j.jsonl cannot be written: "), ended.err);
    }

    /**
     * Each signal comes at another stage of the run: the program leaves as the shell expects (128 + signal),
     * or is done.
     */
    @ParameterizedTest
    @ValueSource(strings = {"INT", "TERM"})
    void anInterruptedRunLeavesWholeFiles(String signal) throws Exception {
        int interrupted = 0;
        for (int stageMs = 200; stageMs <= 1400; stageMs += 400) {
            Path old = Files.writeString(folder.resolve("nights.json"), OLD);
            Process process = started("env --default-signal=" + signal, old);
            Thread.sleep(stageMs);
            String err = ended(process, signal);
            int exit = process.waitFor();
            assertTrue(exit == 128 + (signal.equals("INT") ? 2 : 15) || exit == 0, exit + err);
            boolean told = err.equals("interrupted; no file was left half-written\n");
            assertTrue(told || err.isEmpty(), err);
            interrupted += told ? 1 : 0;
            String content = Files.readString(old);
            assertTrue(content.equals(OLD) || content.startsWith("{") && content.endsWith("}\n"), content);
            assertOnly(old, content);
        }
        assertTrue(interrupted > 0, "no signal came while the program was at work");
    }

    /** As a shell has it for what runs in the background: who started the program wants it to go on. */
    @Test
    void aSignalThatTheCallerIgnoresIsIgnored() throws Exception {
        Path old = Files.writeString(folder.resolve("nights.json"), OLD);
        Process process = started("env --ignore-signal=INT", old);
        Thread.sleep(400);
        assertEquals("", ended(process, "INT"));
        assertEquals(0, process.waitFor());
        String content = Files.readString(old);
        assertTrue(content.startsWith("{") && content.endsWith("}\n"), content);
    }

    /**
     * A year of nights being written to a file, with signals as a command sets them, whatever they are in the
     * tests.
     */
    private static Process started(String signals, Path out) throws IOException {
        List<String> command = new ArrayList<>(List.of(signals.split(" ")));
        command.addAll(java());
        command.addAll(List.of((NIGHTS + " --out " + out).split(" ")));
        return new ProcessBuilder(command).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
    }

    /** Sends a signal and waits for the end; what was said on standard error. */
    private static String ended(Process process, String signal) throws Exception {
        new ProcessBuilder("kill", "-" + signal, String.valueOf(process.pid())).start().waitFor();
        return new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    @BeforeAll
    static void runHere() {
        COMMANDS.parallelStream().forEach(command -> HERE.put(command, bash("gloam " + command)));
    }

    /**
     * No name, option or report depends on what the machine takes for its language, number signs and
     * encoding.
     */
    @ParameterizedTest
    @ValueSource(strings = "-Duser.language=ar -Duser.region=SA -Duser.variant= "
            + "-Djava.locale.useOldISOCodes=true -Dfile.encoding=UTF-16 -Duser.timezone=Pacific/Kiritimati")
    void everyMachineGetsTheSameBytes(String properties) {
        COMMANDS.parallelStream().forEach(command -> assertEquals(HERE.get(command),
                bash("export LC_ALL=C; gloam " + command, properties.split(" ")), properties));
    }

    @Tag("search")
    @ParameterizedTest
    @ValueSource(strings = {"-Duser.language=th -Duser.region=TH -Duser.variant=TH", "-Duser.language=hi",
        "-Duser.language=tr", "-Duser.language=fa", "-Duser.language=de",
        "-Dfile.encoding=ISO-8859-1 -Dsun.jnu.encoding=ANSI_X3.4-1968",
        "-Dfile.encoding=UTF-16", "-Duser.timezone=Pacific/Kiritimati"})
    void everyOtherMachineGetsThemToo(String properties) {
        everyMachineGetsTheSameBytes(properties);
    }

    private void assertOnly(Path file, String content) throws IOException {
        assertEquals(content, Files.readString(file));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(List.of(file), files.toList());
        }
    }

    /** Runs a line of bash in which {@code gloam} is the program. */
    private static Ended bash(String line, String... properties) {
        assertTrue(Files.exists(Path.of("/dev/full")) && Files.isDirectory(Path.of("/proc")),
                "this test needs Linux");
        List<String> java = java(properties);
        String alias = "gloam() { exec '" + String.join("' '", java) + "' \"$@\"; }; ";
        try {
            Path err = Files.createTempFile("gloam", ".err");
            Process process = new ProcessBuilder("bash", "-c",
                    alias + line.replaceFirst("gloam ([^|>&]*)", "(gloam $1)"))
                    .redirectError(err.toFile()).start();
            String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertTrue(process.waitFor(10, TimeUnit.MINUTES), "hangs");
            assertFalse(out.contains("Exception"), out);
            String said = Files.readString(err);
            Files.delete(err);
            return new Ended(process.exitValue(), out, said);
        } catch (IOException | InterruptedException cannotHappen) {
            throw new IllegalStateException(cannotHappen);
        }
    }

    private static List<String> java(String... properties) {
        List<String> java = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java")
                .toString(), "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-XX:-UsePerfData"));
        java.addAll(List.of(properties));
        java.addAll(List.of("-cp", System.getProperty("java.class.path"), Main.class.getName()));
        return java;
    }
}
