package gloam.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.journal.Entry;
import gloam.journal.Journal;
import gloam.journal.Sheets;
import gloam.journal.ToneWord;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The disk is full, or the file another one, while a real process writes: what it acknowledges is there. */
class JournalFaultsTest {

    private static final String CLASSES = System.getProperty("java.class.path");

    @TempDir
    private Path folder;

    /** The file may not grow beyond 4 KiB, which is what a full disk is to the writer. */
    @Test
    void aFullDiskIsToldAndLeavesTheJournalWhole() throws Exception {
        Process process = JournalProcess.start(limited(JournalProcess.java("-cp", CLASSES,
                JournalWriter.class.getName(), file().toString(), "0", "1", "100")));
        List<String> said = JournalProcess.lines(process);
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

    private static List<String> limited(List<String> command) {
        List<String> all = new ArrayList<>(List.of("bash", "-c", "ulimit -f 4; exec \"$@\"", "bash"));
        all.addAll(command);
        return all;
    }

    /**
     * A copy from elsewhere is moved to the journal's name while a command that has opened it waits for its
     * turn.
     */
    @Test
    void anEntryAcknowledgedWhileAnotherFileTakesTheNameIsThere() throws Exception {
        JournalFile.add(file(), entry("first"));
        Path elsewhere = Files.copy(file(), folder.resolve("elsewhere.jsonl"));
        JournalFile.add(elsewhere, entry("from elsewhere"));
        Process process;
        try (FileChannel held = FileChannel.open(file(), StandardOpenOption.WRITE)) {
            held.lock();
            process = JournalProcess.start(JournalProcess.java("-cp", CLASSES, "gloam.Main", "journal", "add",
                    "--journal", file().toString(), "--film", "instant-mono-640", "--sky-mag-arcsec2", "21.4",
                    "--f-number", "8", "--open", "2027-01-10T20:00Z/2h", "--note", "acknowledged"));
            awaitOpened(process, file());
            Files.move(elsewhere, file(), StandardCopyOption.REPLACE_EXISTING);
        }
        List<String> said = JournalProcess.lines(process);
        assertEquals(0, process.waitFor(), said.toString());
        assertTrue(said.get(0).startsWith("Added as entry 3 of "), said.toString());
        assertEquals(List.of("first", "from elsewhere", "acknowledged"),
                JournalProcess.notes(JournalFile.read(file())));
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
        Entry entry = Sheets.steady("", Films.print(640, Reciprocity.none()), 300, 600,
                Sheets.judged(ToneWord.DARK));
        return new Entry(Instant.EPOCH, entry.exposed(), entry.outcome(), note, Optional.empty());
    }

    private Path file() {
        return folder.resolve("journal.jsonl");
    }
}
