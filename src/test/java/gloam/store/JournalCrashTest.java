package gloam.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.journal.Entry;
import gloam.journal.Journal;
import gloam.journal.Sheets;
import gloam.journal.ToneWord;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Real processes write one journal at once and are killed: nothing acknowledged is lost, nothing doubled. */
class JournalCrashTest {

    private static final int WRITERS = 8;
    private static final int KILLS_A_WRITER = 25;
    private static final int MOST_MS_TO_KILL = 60;

    @TempDir
    private static Path jars;

    @TempDir
    private Path folder;

    /** Packs the classes and archives them as the virtual machine likes them: its starts take half the time. */
    @BeforeAll
    static void packWriter() throws Exception {
        try (JarOutputStream jar = new JarOutputStream(Files.newOutputStream(jars.resolve("writer.jar")))) {
            pack(jar, Path.of("target/classes"));
            pack(jar, Path.of("target/test-classes"));
        }
        List<String> command = new ArrayList<>(command(jars.resolve("first.jsonl"), 0, 1, 2));
        command.set(1, "-XX:ArchiveClassesAtExit=" + jars.resolve("writer.jsa"));
        assertEquals(0, new ProcessBuilder(command).redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD).start().waitFor());
    }

    private static void pack(JarOutputStream jar, Path classes) throws IOException {
        try (Stream<Path> files = Files.walk(classes)) {
            for (Path file : files.filter(name -> name.toString().endsWith(".class")).toList()) {
                jar.putNextEntry(new JarEntry(classes.relativize(file).toString()));
                Files.copy(file, jar);
            }
        }
    }

    @Test
    void eightWritersAtOnceLoseAndDoubleNothing() throws Exception {
        int entries = 20;
        List<Integer> exits = together(writer -> {
            Process process = start(writer, 1, entries);
            lines(process);
            return process.waitFor();
        });
        assertEquals(IntStream.range(0, WRITERS).mapToObj(writer -> 0).toList(), exits);
        Journal journal = JournalFile.read(file());
        assertEquals(List.of(), journal.damages());
        assertEquals(WRITERS * entries, notes(journal).size());
        assertEquals(WRITERS * entries, new HashSet<>(notes(journal)).size());
        assertEquals(WRITERS * entries, journal.sheets().stream().map(Entry::id).distinct().count());
    }

    /** Each writer is killed at a random moment and started again with the first entry it did not hear of. */
    @Test
    void twoHundredKillsLoseAndDoubleNothing() throws Exception {
        List<Integer> acknowledged = together(writer -> {
            SplittableRandom random = new SplittableRandom(20270206 + writer);
            int last = 0;
            for (int kill = 0; kill < KILLS_A_WRITER; kill++) {
                last = untilKilled(start(writer, last + 1, last + 1000), random, last);
            }
            return last;
        });
        List<String> notes = notes(JournalFile.read(file()));
        assertEquals(notes.size(), new HashSet<>(notes).size(), "an entry is there twice");
        int all = acknowledged.stream().mapToInt(Integer::intValue).sum();
        assertTrue(all > WRITERS * KILLS_A_WRITER, "only " + all + " entries were written: the kills came too early");
        for (int writer = 0; writer < WRITERS; writer++) {
            for (int number = 1; number <= acknowledged.get(writer); number++) {
                assertTrue(notes.contains(writer + " " + number), "lost: " + writer + " " + number);
            }
            // at most the entry that was under way when the last kill came was written and not acknowledged
            assertTrue(!notes.contains(writer + " " + (acknowledged.get(writer) + 2)), "never asked for");
        }
    }

    /** The file may not grow beyond 4 KiB, which is what a full disk is to the writer. */
    @Test
    void aFullDiskIsToldAndLeavesTheJournalWhole() throws Exception {
        Process process = new ProcessBuilder(limited(command(file(), 0, 1, 100))).redirectErrorStream(true).start();
        List<String> said = lines(process);
        assertEquals(2, process.waitFor(), said.toString());
        int acknowledged = said.size() - 1;
        assertTrue(acknowledged >= 3, said.toString());
        assertTrue(said.get(acknowledged).startsWith("nothing was added: "), said.toString());
        assertTrue(said.get(acknowledged).endsWith("The journal is as it was."), said.toString());
        Journal journal = JournalFile.read(file());
        assertEquals(List.of(), journal.damages());
        assertEquals(acknowledged, journal.sheets().size());
        assertTrue(Files.readString(file()).endsWith("}\n"));
    }

    /** A copy from elsewhere is moved to the journal's name while a command that has opened it waits for its turn. */
    @Test
    void anEntryAcknowledgedWhileAnotherFileTakesTheNameIsThere() throws Exception {
        JournalFile.add(file(), entry("first"));
        Path elsewhere = Files.copy(file(), folder.resolve("elsewhere.jsonl"));
        JournalFile.add(elsewhere, entry("from elsewhere"));
        Process process;
        try (FileChannel held = FileChannel.open(file(), StandardOpenOption.WRITE)) {
            held.lock();
            process = new ProcessBuilder(gloam("journal", "add", "--journal", file().toString(), "--film",
                    "instant-mono-640", "--sky-mag-arcsec2", "21.4", "--f-number", "8", "--open",
                    "2027-01-10T20:00Z/2h", "--note", "acknowledged")).redirectErrorStream(true).start();
            awaitOpened(process, file());
            Files.move(elsewhere, file(), StandardCopyOption.REPLACE_EXISTING);
        }
        List<String> said = lines(process);
        assertEquals(0, process.waitFor(), said.toString());
        assertTrue(said.get(0).startsWith("Added as entry 3 of "), said.toString());
        assertEquals(List.of("first", "from elsewhere", "acknowledged"), notes(JournalFile.read(file())));
    }

    private static void awaitOpened(Process process, Path file) throws Exception {
        Path descriptors = Path.of("/proc", String.valueOf(process.pid()), "fd");
        for (boolean opened = false; !opened;) {
            assertTrue(process.isAlive(), "ended before its turn came");
            Thread.sleep(10);
            try (Stream<Path> all = Files.list(descriptors)) {
                opened = all.anyMatch(descriptor -> leadsTo(descriptor, file));
            }
        }
    }

    private static boolean leadsTo(Path descriptor, Path file) {
        try {
            return Files.readSymbolicLink(descriptor).equals(file);
        } catch (IOException closedMeanwhile) {
            return false;
        }
    }

    private static Entry entry(String note) {
        Entry entry = Sheets.steady("", Films.print(640, Reciprocity.none()), 300, 600, Sheets.judged(ToneWord.DARK));
        return new Entry("", Instant.EPOCH, Optional.empty(), false, entry.exposed(), entry.outcome(), note);
    }

    private static List<String> gloam(String... args) {
        List<String> all = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp",
                System.getProperty("java.class.path"), "gloam.Main"));
        all.addAll(List.of(args));
        return all;
    }

    /** Reads what is acknowledged and kills the process a random while after its first word; the last one heard of. */
    private static int untilKilled(Process process, SplittableRandom random, int last) throws Exception {
        int heard = last;
        try (BufferedReader out = reader(process)) {
            heard = number(out.readLine(), heard);
            Thread.sleep(random.nextInt(MOST_MS_TO_KILL));
            process.toHandle().destroyForcibly();
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                heard = number(line, heard);
            }
        }
        assertEquals(128 + 9, process.waitFor(), "ended by itself");
        return heard;
    }

    private static int number(String line, int otherwise) {
        return line == null || !line.matches("[0-9]+") ? otherwise : Integer.parseInt(line);
    }

    private interface Work {
        int of(int writer) throws Exception;
    }

    private static List<Integer> together(Work work) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(WRITERS);
        try {
            List<Callable<Integer>> tasks = new ArrayList<>();
            for (int writer = 0; writer < WRITERS; writer++) {
                int number = writer;
                tasks.add(() -> work.of(number));
            }
            List<Integer> results = new ArrayList<>();
            for (Future<Integer> result : threads.invokeAll(tasks)) {
                results.add(result.get());
            }
            return results;
        } finally {
            threads.shutdownNow();
        }
    }

    private Process start(int writer, int first, int last) throws IOException {
        return new ProcessBuilder(command(file(), writer, first, last)).redirectErrorStream(true).start();
    }

    private static List<String> command(Path file, int writer, int first, int last) {
        String libraries = Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .filter(part -> part.endsWith(".jar")).collect(Collectors.joining(File.pathSeparator));
        return List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:SharedArchiveFile=" + jars.resolve("writer.jsa"), "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC",
                "-XX:-UsePerfData", "-cp", jars.resolve("writer.jar") + File.pathSeparator + libraries,
                JournalWriter.class.getName(), file.toString(), String.valueOf(writer), String.valueOf(first),
                String.valueOf(last));
    }

    private static List<String> limited(List<String> command) {
        List<String> all = new ArrayList<>(List.of("bash", "-c", "ulimit -f 4; exec \"$@\"", "bash"));
        all.addAll(command);
        return all;
    }

    private static List<String> lines(Process process) throws IOException {
        try (BufferedReader out = reader(process)) {
            return out.lines().toList();
        }
    }

    private static BufferedReader reader(Process process) {
        return new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    private static List<String> notes(Journal journal) {
        return journal.sheets().stream().map(Entry::note).toList();
    }

    private Path file() {
        return folder.resolve("journal.jsonl");
    }
}
