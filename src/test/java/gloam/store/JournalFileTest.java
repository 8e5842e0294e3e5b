package gloam.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.journal.Entry;
import gloam.journal.Journal;
import gloam.journal.Outcome;
import gloam.journal.Sheets;
import gloam.journal.Spoiler;
import gloam.journal.ToneWord;
import gloam.journal.Verdict;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JournalFileTest {

    @TempDir
    private Path folder;

    @Test
    void whatIsAddedIsReadAgain() {
        Entry full = entry(3600,
                new Outcome(Optional.of(new Verdict.InStops(-1.25, 0.4)), OptionalDouble.of(4.2),
                Optional.of(true), List.of(Spoiler.LIGHT_LEAK, Spoiler.DEW)), "line one\nline \"two\" =A1");
        Entry added = JournalFile.add(file(), full).entry();
        assertEquals("1", added.id());
        assertEquals(List.of(added), JournalFile.read(file()).sheets());
        assertEquals(full.outcome(), added.outcome());
        assertEquals(full.note(), added.note());
        assertEquals(full.exposed().openings().get(0).open(), added.exposed().openings().get(0).open());
        // lights are written in four digits, a lens and an aim as given
        assertEquals(full.exposed().middleLx(), added.exposed().middleLx(), 5e-4 * full.exposed().middleLx());
        assertEquals(full.exposed().lens(), added.exposed().lens());
    }

    @Test
    void everyEntryIsOneReadableLine() throws IOException {
        add(600);
        add(1200);
        List<String> lines = Files.readAllLines(file());
        assertEquals(2, lines.size());
        assertTrue(lines.get(1).matches("\\{\"gloam-journal\":2,\"id\":\"[0-9a-f]{16}\","
                + "\"written\":\"2027-02-09T01:00:00Z\",\"film\".*"), lines.get(1));
        assertTrue(lines.get(1).contains(
                "\"open\":\"2027-02-08T20:00:00Z\",\"close\":\"2027-02-08T20:20:00Z\""));
    }

    @Test
    void addingAgainAddsNothing() {
        add(600);
        JournalFile.Added again = JournalFile.add(file(), entry(600, Sheets.judged(ToneWord.DARK), ""));
        assertTrue(again.already());
        assertEquals("1", again.entry().id());
        assertEquals(1, JournalFile.read(file()).sheets().size());
    }

    @Test
    void aCorrectionNamesWhatItChanges() throws IOException {
        add(600);
        add(1200);
        correct("1", ToneWord.LIGHT);
        correct("1", ToneWord.DARK);
        correct("1", ToneWord.LIGHT);
        List<String> lines = Files.readAllLines(file());
        assertEquals(5, lines.size());
        assertTrue(lines.get(4).endsWith("\"change\":{\"tone\":\"light\",\"tone-stops\":null,"
                + "\"tone-spread-stops\":null}}"), lines.get(4));
        Journal journal = JournalFile.read(file());
        assertEquals(List.of("1", "2"), journal.sheets().stream().map(Entry::id).toList());
        assertEquals(Optional.of(new Verdict.InWords(ToneWord.LIGHT)), journal.sheets().get(0).outcome()
                .verdict());
    }

    @Test
    void aSheetMayBeWithdrawn() {
        add(600);
        JournalFile.correct(file(), "1", last -> new Entry(last.id(), last.identity(), last.writtenAt(), true,
                last.exposed(), last.outcome(), last.note(), last.wish(), last.plannedToneStops(),
                last.picture()));
        assertEquals(List.of(), JournalFile.read(file()).sheets());
    }

    @Test
    void whatIsNotThereCannotBeCorrected() {
        add(600);
        assertEquals(List.of("the journal has no entry \"7\" to correct"),
                Refusals.of(folder, () -> correct("7", ToneWord.LIGHT)));
    }

    @Test
    void aTornLastLineIsToldAndTheNextEntryStandsWhole() throws IOException {
        add(600);
        String line = Files.readString(file());
        Files.writeString(file(), line + line.substring(0, line.length() / 2));
        assertEquals(1, JournalFile.read(file()).sheets().size());
        assertEquals(List.of("journal.jsonl:2: the last line is broken off; its entry was never "
                + "acknowledged. Add it again."), damages());
        add(1200);
        assertEquals(List.of("1", "3"), JournalFile.read(file()).sheets().stream().map(Entry::id).toList());
        assertTrue(damages().get(0).startsWith("journal.jsonl:2:"), damages().toString());
    }

    @Test
    void aLineThatLacksOnlyItsEndIsAnEntry() throws IOException {
        add(600);
        String line = Files.readString(file());
        Files.writeString(file(), line.stripTrailing());
        assertTrue(JournalFile.add(file(), entry(600, Sheets.judged(ToneWord.DARK), "")).already());
        assertEquals(line, Files.readString(file()));
    }

    @Test
    void damagedLinesAreToldByNumberAndTheOthersRead() throws IOException {
        for (int i = 1; i <= 4; i++) {
            add(600 * i);
        }
        List<String> lines = Files.readAllLines(file());
        lines.set(1, lines.get(1).replace("\"dark\"", "\"drak\""));
        lines.set(2, lines.get(2).substring(5));
        lines.add(1, "");
        lines.add(lines.get(0));
        Files.write(file(), lines);
        Files.write(file(), new byte[] {(byte) 0xff, '\n'}, StandardOpenOption.APPEND);
        Journal journal = JournalFile.read(file());
        assertEquals(List.of("1", "4"), journal.sheets().stream().map(Entry::id).toList());
        assertEquals(3, journal.damages().size(), journal.damages().toString());
        assertTrue(damages().get(0).startsWith("journal.jsonl:3:"), damages().toString());
        assertTrue(damages().get(0).contains("Did you mean dark?"), damages().toString());
        assertTrue(damages().get(1).startsWith("journal.jsonl:4:"), damages().toString());
        assertEquals("journal.jsonl:7: not UTF-8 text. The line is left out.", damages().get(2));
    }

    @Test
    void newNamesKeepClearOfDamagedLines() throws IOException {
        add(600);
        add(1200);
        String second = Files.readAllLines(file()).get(1);
        Files.writeString(file(), Files.readString(file()).replace(second, second.substring(9)));
        assertEquals("3", add(1800).id());
    }

    @Test
    void otherFilesAreLeftAlone() throws IOException {
        Path trip = Refusals.file(folder, "trip.yaml", "title: x\n");
        assertEquals(List.of("journal \"trip.yaml\": the name of a journal ends in .jsonl"),
                Refusals.of(folder, () -> JournalFile.add(trip,
                entry(600, Sheets.judged(ToneWord.DARK), ""))));
        assertEquals("title: x\n", Files.readString(trip));
    }

    @Test
    void aFileThatCannotBeWrittenIsToldInOneLine() {
        Path nowhere = folder.resolve("none/journal.jsonl");
        assertEquals(List.of("nothing was added: none/journal.jsonl cannot be written: its folder does not "
                + "exist. The journal is as it was."), Refusals.of(folder, () -> JournalFile.add(nowhere,
                        entry(600, Sheets.judged(ToneWord.DARK), ""))));
        assertFalse(Files.exists(nowhere));
        assertEquals(List.of("no file journal.jsonl. Check the name and the folder you are in."),
                Refusals.of(folder, () -> JournalFile.read(file())));
    }

    @Test
    void aCopyIsABackup() throws IOException {
        add(600);
        Path copy = Files.copy(file(), folder.resolve("copy.jsonl"));
        assertEquals(JournalFile.read(file()), JournalFile.read(copy));
        assertArrayEquals(Files.readString(file()).getBytes(StandardCharsets.UTF_8),
                Files.readAllBytes(copy));
    }

    private Path file() {
        return folder.resolve("journal.jsonl");
    }

    private List<String> damages() {
        return JournalFile.read(file()).damages().stream().map(line -> line.replace(folder + "/", ""))
                .toList();
    }

    private Entry add(double openS) {
        return JournalFile.add(file(), entry(openS, Sheets.judged(ToneWord.DARK), "")).entry();
    }

    private void correct(String id, ToneWord word) {
        JournalFile.correct(file(), id, last -> new Entry(last.id(), last.identity(), last.writtenAt(), false,
                last.exposed(), Sheets.judged(word), last.note(), last.wish(), last.plannedToneStops(),
                last.picture()));
    }

    private static Entry entry(double openS, Outcome outcome, String note) {
        Entry entry = Sheets.steady("", Films.print(640, Reciprocity.none()), 300, openS, outcome);
        return new Entry(Instant.parse("2027-02-09T01:00:00Z"), entry.exposed(), outcome, note,
                Optional.empty());
    }
}
