package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.journal.Entry;
import gloam.journal.Exposed;
import gloam.journal.Outcome;
import gloam.journal.Sheets;
import gloam.journal.ToneWord;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a later word on a sheet changes, and nothing else. */
class EntryChangeTest {

    private static final Entry BEFORE = Sheets.steady("1", Films.print(640, Reciprocity.none()), 300, 600,
            Sheets.judged(ToneWord.DARK));
    private static final Exposed WAS = BEFORE.exposed();

    private static List<EntryChange> changes(Exposed exposed, Outcome outcome, String note,
            boolean withdrawn) {
        return EntryChange.between(BEFORE, new Entry("1", "", Instant.EPOCH, withdrawn, exposed, outcome,
                note, Optional.empty(), OptionalDouble.empty(), Optional.empty()));
    }

    private static EntryChange change(String what, String before, String now) {
        return new EntryChange(what, Optional.ofNullable(before), Optional.ofNullable(now));
    }

    @Test
    void nothingChangesNothing() {
        assertEquals(List.of(), changes(WAS, BEFORE.outcome(), "", false));
    }

    @Test
    void whatIsSaidAnewIsToldWithWhatItWas() {
        Exposed warmer = new Exposed(WAS.film(), "B", Optional.empty(), WAS.aim(), WAS.lens(), WAS.openings(),
                true,
                WAS.stars(), OptionalDouble.of(5));
        assertEquals(List.of(change("batch", null, "B"), change("site", "Meadow", null),
                change("latitude", "41.0000°", null),
                change("zone", "Z", null), change("light", "computed", "measured"),
                        change("temperature", null, "5 °C")),
                changes(warmer, BEFORE.outcome(), "", false));
    }

    @Test
    void theOutcomeIsToldToo() {
        Outcome now = new Outcome(Optional.empty(), OptionalDouble.of(4.5), Optional.of(true), List.of());
        assertEquals(List.of(change("withdrawn", null, "yes"), change("tone", "dark", null),
                change("faintest star", null, "4.5 mag"), change("kept", null, "yes"),
                        change("note", null, "hm")),
                changes(WAS, now, "hm", true));
        assertEquals("tone: dark → nothing", change("tone", "dark", null).text());
        assertEquals("note: nothing → hm", change("note", null, "hm").text());
    }
}
