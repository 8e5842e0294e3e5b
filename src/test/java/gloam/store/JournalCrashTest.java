package gloam.store;

import static gloam.store.JournalProcess.lines;
import static gloam.store.JournalProcess.notes;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.journal.Entry;
import gloam.journal.Journal;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Real processes write one journal at once and are killed: nothing acknowledged is lost, nothing doubled. */
class JournalCrashTest {

    private static final int WRITERS = 8;
    private static final int MOST_MS_TO_KILL = 60;

    @TempDir
    private static Path jars;

    @TempDir
    private Path folder;

    @BeforeAll
    static void packWriter() throws Exception {
        JournalProcess.pack(jars);
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

    /** Three processes correct one sheet at once, each its own field: no correction undoes another. */
    @Test
    void correctionsOfOneSheetAtOnceAllHold() throws Exception {
        int corrections = 20;
        lines(start(0, 1, 1));
        List<String> fields = List.of("note", "wish", "picture");
        together(writer -> {
            if (writer >= fields.size()) {
                return 0;
            }
            List<String> command = JournalProcess.packed(jars, file(), writer, 1, corrections);
            command.add(fields.get(writer));
            Process process = JournalProcess.start(command);
            lines(process);
            return process.waitFor();
        });
        Journal journal = JournalFile.read(file());
        assertEquals(List.of(), journal.damages());
        // the first note is what the sheet says already
        assertEquals(fields.size() * corrections, Files.readAllLines(file()).size());
        Entry sheet = journal.sheets().get(0);
        assertEquals(List.of("0 20", "1 20", "2 20"), List.of(sheet.note(), sheet.wish().orElseThrow(),
                sheet.picture().orElseThrow()));
    }

    @Test
    void eightKillsLoseAndDoubleNothing() throws Exception {
        assertKillsLoseAndDoubleNothing(1);
    }

    @Tag("search")
    @Test
    void twoHundredKillsLoseAndDoubleNothing() throws Exception {
        assertKillsLoseAndDoubleNothing(25);
    }

    /** Each writer is killed at a random moment and started again with the first entry it did not hear of. */
    private void assertKillsLoseAndDoubleNothing(int killsAWriter) throws Exception {
        List<Integer> acknowledged = together(writer -> {
            SplittableRandom random = new SplittableRandom(20270206 + writer);
            int last = 0;
            for (int kill = 0; kill < killsAWriter; kill++) {
                last = untilKilled(start(writer, last + 1, last + 1000), random, last);
            }
            return last;
        });
        List<String> notes = notes(JournalFile.read(file()));
        assertEquals(notes.size(), new HashSet<>(notes).size(), "an entry is there twice");
        int all = acknowledged.stream().mapToInt(Integer::intValue).sum();
        assertTrue(all > WRITERS * killsAWriter, "only " + all
                + " entries were written: the kills came too early");
        for (int writer = 0; writer < WRITERS; writer++) {
            for (int number = 1; number <= acknowledged.get(writer); number++) {
                assertTrue(notes.contains(writer + " " + number), "lost: " + writer + " " + number);
            }
            // at most the entry that was under way when the last kill came was written and not acknowledged
            assertTrue(!notes.contains(writer + " " + (acknowledged.get(writer) + 2)), "never asked for");
        }
    }

    /**
     * Reads what is acknowledged and kills the process a random while after one of its first words; the last
     * one heard of.
     */
    private static int untilKilled(Process process, SplittableRandom random, int last) throws Exception {
        int heard = last;
        try (BufferedReader out = JournalProcess.reader(process)) {
            for (int words = 1 + random.nextInt(3); words > 0; words--) {
                heard = number(out.readLine(), heard);
            }
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
        return JournalProcess.start(JournalProcess.packed(jars, file(), writer, first, last));
    }

    private Path file() {
        return folder.resolve("journal.jsonl");
    }
}
