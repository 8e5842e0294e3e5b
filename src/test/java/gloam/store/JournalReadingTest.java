package gloam.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.journal.Entry;
import gloam.journal.Estimate;
import gloam.journal.Outcome;
import gloam.journal.ScanReading;
import gloam.journal.ScanReading.Bound;
import gloam.journal.Sheets;
import gloam.journal.ToneWord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The reading of a scan in the journal's file. */
class JournalReadingTest {

    private static final Instant NOON = Instant.parse("2027-02-09T12:00:00Z");
    private static final ScanReading WHOLE = reading(new ScanReading.Tone(-1.25, 0.3, Bound.NONE), "scan.png",
            Optional.of(new Estimate(4.75, 0.35)));
    private static final ScanReading OTHER = new ScanReading("other.png", "f".repeat(64),
            new ScanReading.Tone(-3.25, 0, Bound.AT_MOST), Optional.empty());

    @TempDir
    Path folder;

    private Path file;

    private static ScanReading reading(ScanReading.Tone tone, String file, Optional<Estimate> limit) {
        ScanReading scan = Sheets.scanned(tone, limit).reading().orElseThrow();
        return new ScanReading(file, scan.sha256(), scan.tone(), scan.trails());
    }

    @BeforeEach
    void aSheet() {
        file = folder.resolve("journal.jsonl");
        JournalFile.add(file, Sheets.steady("", Films.print(640, Reciprocity.none()), 300, 600,
                Sheets.judged(ToneWord.DARK)));
    }

    private static boolean write(Path journal, ScanReading reading, int minutes) {
        return JournalFile.correct(journal, "1", last -> last.cameOut(last.outcome()
                .read(Optional.of(reading))).writtenAt(NOON.plusSeconds(60L * minutes))).already();
    }

    private static Outcome outcome(Path journal) {
        return JournalFile.read(journal).lastWord("1").map(Entry::outcome).orElseThrow();
    }

    @Test
    void readingTheSameAgainAddsNothing() throws IOException {
        write(file, WHOLE, 1);
        assertEquals(WHOLE, outcome(file).reading().orElseThrow());
        String before = Files.readString(file);
        assertTrue(write(file, WHOLE, 2));
        assertEquals(before, Files.readString(file));
    }

    /** A later one leaves nothing of the one before, whether it was there or comes from a copy. */
    @Test
    void theLaterOfTwoReadingsHoldsAsAWhole() throws IOException {
        Path copy = Files.copy(file, folder.resolve("copy.jsonl"));
        write(file, WHOLE, 1);
        write(copy, OTHER, 2);
        JournalCopies.Copy joined = JournalCopies.join(List.of(file, copy));
        assertEquals(OTHER, joined.journal().lastWord("1").orElseThrow().outcome().reading().orElseThrow());
        write(copy, WHOLE, 3);
        ScanReading darker = reading(new ScanReading.Tone(-2, 0.4, Bound.NONE), "scan.png",
                Optional.of(new Estimate(4.75, 0.35)));
        ScanReading deeper = reading(WHOLE.tone(), "scan.png", Optional.of(new Estimate(5.5, 0.35)));
        write(file, darker, 4);
        write(copy, deeper, 5);
        assertEquals(deeper, JournalCopies.join(List.of(file, copy)).journal().lastWord("1").orElseThrow()
                .outcome().reading().orElseThrow());
        write(file, OTHER, 6);
        assertEquals(OTHER, outcome(file).reading().orElseThrow());
        write(file, WHOLE, 7);
        assertEquals(WHOLE, outcome(file).reading().orElseThrow());
    }

    @Test
    void otherCorrectionsAndRepairKeepIt() throws IOException {
        write(file, WHOLE, 1);
        JournalFile.correct(file, "1", last -> last.cameOut(new Outcome(last.outcome().verdict(),
                last.outcome().faintestMag(), Optional.of(true), List.of(), last.outcome().reading()))
                .writtenAt(NOON.plusSeconds(120)));
        Files.writeString(file, "\uFEFF" + Files.readString(file));
        Outcome repaired = JournalCopies.repair(file).journal().lastWord("1").orElseThrow().outcome();
        assertEquals(Optional.of(WHOLE), repaired.reading());
        assertEquals(Optional.of(true), repaired.kept());
    }

    /** What a newer program says of a reading is passed over, and the rest is read. */
    @Test
    void unknownKeysOfANewerProgramArePassedOver() throws IOException {
        write(file, WHOLE, 1);
        String newer = Files.readString(file).replace("\"gloam-journal\":2", "\"gloam-journal\":3")
                .replace("\"sha256\"", "\"grain\":7,\"sha256\"");
        assertTrue(newer.contains("\"grain\":7"), newer);
        Files.writeString(file, newer);
        assertEquals(WHOLE, outcome(file).reading().orElseThrow());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "tone-stops":-1.25,           |                         | reading.tone-stops: is missing
            "tone-error-stops":0.3        | "tone-error-stops":-0.3 | error of the sky tone -0.3 stops
            "tone-bound":"none"           | "tone-bound":"x"        | expected none, at-most or at-least
            "focal-length-mm":119.5       | "focal-length-mm":0     | focal length 0 mm is out of range; give 5
            "seen":31                     | "seen":41               | trails seen 41 is out of range; give 0 … 40
            "limit-error-mag":0.35        | "limit-error-mag":0     | error of the faintest trail 0 mag
            "limit-error-mag":0.35        | "limit-error-mag":null  | limit-mag and limit-error-mag go together
            "azimuth-deg":0.5             | "azimuth-deg":400       | azimuth 400 deg
            """)
    void aSpoiledReadingIsNamed(String right, String wrong, String says) throws IOException {
        write(file, WHOLE, 1);
        String lines = Files.readString(file);
        assertTrue(lines.contains(right), lines);
        Files.writeString(file, lines.replace(right, wrong == null ? "" : wrong));
        List<String> damages = JournalFile.read(file).damages();
        assertTrue(damages.stream().anyMatch(damage -> damage.contains(says)), damages.toString());
    }
}
