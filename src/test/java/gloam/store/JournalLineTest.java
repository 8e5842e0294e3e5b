package gloam.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.journal.Entry;
import gloam.journal.Estimate;
import gloam.journal.Outcome;
import gloam.journal.ScanReading;
import gloam.journal.Sheets;
import gloam.journal.Spoiler;
import gloam.journal.ToneWord;
import gloam.journal.Verdict;
import gloam.units.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class JournalLineTest {

    private static final String LINE = """
            {"gloam-journal":1,"id":"7","written":"2027-02-09T01:00:00Z","film":"Slow pan",\
            "site":{"name":"Moor","latitude-deg":54.5,"zone":"Europe/London"},"azimuth-deg":180,"altitude-deg":41.5,\
            "lens":{"focal-length-mm":120,"f-number":11,"transmittance":0.9,"spot-um":40,"filter-stops":0,\
            "projection":"rectilinear"},"openings":[{"open":"2027-02-08T20:00:00Z","close":"2027-02-08T21:00:00Z",\
            "film-lx":[2.474e-04,1.000e+00]}],"light":"computed","star-image-speed-mm-s":0.006,"star-loss-mag":0.3,\
            "tone":"very-dark","kept":true,"spoiled-by":["dew","cloud"]}""";

    @TempDir
    Path folder;

    /** A sheet is written in the second form, with the sky in place of the light on the film. */
    @Test
    void aLineOfTheJournalSaysWhatWasRead() throws IOException {
        List<String> lines = new ArrayList<>(Files.readAllLines(Path.of("demo-data/journal.jsonl")));
        lines.add(LINE);
        for (String line : lines) {
            Entry first = read(line);
            String written = Bound.line(JournalLine.of(first));
            Entry second = read(written);
            assertEquals(written, Bound.line(JournalLine.of(second)));
            assertEquals(first.outcome(), second.outcome());
            assertEquals(first.exposed().lens(), second.exposed().lens());
            assertEquals(first.exposed().stars(), second.exposed().stars());
            for (int i = 0; i < first.exposed().openings().size(); i++) {
                List<Double> was = first.exposed().openings().get(i).illuminancesLx();
                List<Double> is = second.exposed().openings().get(i).illuminancesLx();
                for (int j = 0; j < was.size(); j++) {
                    // seven digits of the sky's luminance are written
                    assertEquals(was.get(j), is.get(j), 1e-6 * was.get(j));
                }
            }
        }
    }

    static Stream<Outcome> outcomes() {
        OptionalDouble none = OptionalDouble.empty();
        return Stream.of(new Outcome(Optional.empty(), none, Optional.empty(), List.of()),
                new Outcome(Optional.of(new Verdict.InWords(ToneWord.VERY_DARK)), OptionalDouble.of(4.25),
                        Optional.of(false), List.of(Spoiler.DEW)),
                new Outcome(Optional.of(new Verdict.InStops(-1.25, 0.5)), none, Optional.of(true),
                List.of()), Sheets.scanned(new ScanReading.Tone(-1.25, 0.31, ScanReading.Bound.NONE),
                Optional.of(new Estimate(4.75, 0.35))), Sheets.scanned(new ScanReading.Tone(-3.25, 0,
                ScanReading.Bound.AT_MOST), Optional.empty()));
    }

    @ParameterizedTest
    @MethodSource("outcomes")
    void anEntryIsReadAsItWasWritten(Outcome outcome) {
        Entry sheet = Sheets.steady("4", Films.print(640, Reciprocity.none()), 300, 600, outcome);
        for (Entry entry : List.of(sheet,
                new Entry("5", "ab12", Instant.parse("2027-02-09T01:00:00.125Z"), true, sheet.exposed(),
                outcome, "dew, then \"frost\"", Optional.of("wish"), OptionalDouble.of(-1.25),
                Optional.of("photos/sheet 5.jpg")))) {
            Entry there = read(Bound.line(JournalLine.of(entry.identified("ab12"))));
            assertEquals(JournalLine.of(entry.identified("ab12")), JournalLine.of(there));
            assertEquals(outcome, there.outcome());
            assertEquals(entry.picture(), there.picture());
            assertEquals(entry.plannedToneStops(), there.plannedToneStops());
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "gloam-journal":1      | "gloam-journal":0      | 1: gloam-journal 0 is out of range; give 1 … 999
            "id":"7"               | "id":7                 | 25 id: expected text, found "7"
            "id":"7",              |                        | 1 id: is missing. Add the key id.
            "film":"Slow pan"      | "film":" "             | 69 film: expected text, found " "
            "film":"Slow pan"      | "flim":"Slow pan"      | 1 film: is missing. Add the key film.
            "kept":true            | "kopt":true            | 502 kopt: unknown key. Did you mean kept?
            "kept":true            | "kept":"true"          | 509 kept: expected true or false, found "true"
            "very-dark"            | "very-drak"            | 490 tone: expected black, very-dark, dark, middle, light or \
            white, found "very-drak". Did you mean very-dark?
            "very-dark"            | 2                      | 490 tone: expected black, very-dark, dark, middle, light or \
            white, found "2"
            Europe/London          | Europe/Lundon          | 129 site.zone: expected a time zone such as Europe/Madrid, \
            found "Europe/Lundon"
            2027-02-09T01:00:00Z   | 2027-02-09             | 39 written: expected an instant such as 2027-02-08T20:35:00Z, \
            found "2027-02-09"
            "latitude-deg":54.5    | "latitude-deg":154.5   | 87 site: latitude 154.5 deg is out of range; give -90 … 90 deg
            "f-number":11          | "f-number":0.1         | 191 lens: f-number 0.1 is out of range; give 0.7 … 512
            "tone":                | "tone-stops":-1,"tone": | 1: tone-stops stands beside tone; keep one of the two
            "2027-02-08T21:00:00Z" | "2027-02-08T19:00:00Z" | 318 openings[0]: closes at 2027-02-08T19:00:00Z, not after it \
            opens. Put the two in order.
            [2.474e-04,1.000e+00]  | [2.474e-04,null]       | 401 openings[0].film-lx[1]: expected a number, found nothing. \
            Write a value.
            """)
    void whatIsWrongIsToldAtItsPlace(String right, String wrong, String problem) {
        String text = LINE.replace(right, wrong == null ? "" : wrong);
        assertEquals(List.of("journal.jsonl:3:" + problem), Refusals.of(folder, () -> read(text)));
    }

    @Test
    void aTextMayNotBeEndless() {
        assertEquals(List.of("journal.jsonl:3:69 film: text of 501 characters; at most 500 are read. "
                + "Shorten it."), Refusals.of(folder, () -> read(LINE.replace("Slow pan", "x".repeat(501)))));
    }

    private static Entry read(String line) {
        JournalText.Line there = JournalText.line(Path.of("journal.jsonl"), 3, line, false);
        if (!there.read()) {
            throw new BadInput(there.problems());
        }
        return there.sheet().orElseThrow();
    }
}
