package gloam.cli;

import gloam.answer.SheetLit;
import gloam.journal.Entry;
import gloam.journal.Exposed;
import gloam.journal.Opening;
import gloam.journal.Outcome;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a correction begins with: the last word on a sheet without what is taken back of it.
 *
 * @param before  the last word on the sheet
 * @param cleared what is taken back
 */
record Correction(Entry before, List<Clearable> cleared) {

    /** Whether something is taken back. */
    boolean clears(Clearable what) {
        return cleared.contains(what);
    }

    /** Whether the sheet is out as far as the last word goes. */
    boolean withdrawn() {
        return before.withdrawn() && !clears(Clearable.WITHDRAW);
    }

    /** How the sheet was exposed; its light and stars are those of the last word. */
    Exposed exposed() {
        Exposed was = before.exposed();
        return new Exposed(was.film(), clears(Clearable.BATCH) ? "" : was.batch(),
                was.place().filter(place -> !clears(Clearable.SITE)),
                was.aim().filter(aim -> !clears(Clearable.AIM)),
                was.lens(), openings(was), was.measured() && !clears(Clearable.SKY), was.stars(),
                clears(Clearable.TEMPERATURE) ? OptionalDouble.empty() : was.temperatureC());
    }

    private List<Opening> openings(Exposed was) {
        return clears(Clearable.AIM) ? was.openings().stream().map(opening ->
                opening.set(Optional.empty(), opening.fNumber())).toList() : was.openings();
    }

    /** The same as the light of a sheet asks for it. */
    SheetLit.LastWord lastWord() {
        return new SheetLit.LastWord(before.exposed(), exposed(), clears(Clearable.SITE)
                || clears(Clearable.AIM));
    }

    /** How it came out. */
    Outcome outcome() {
        Outcome was = before.outcome();
        return new Outcome(was.verdict().filter(verdict -> !clears(Clearable.TONE)),
                clears(Clearable.FAINTEST) ? OptionalDouble.empty() : was.faintestMag(),
                was.kept().filter(kept -> !clears(Clearable.KEPT)),
                clears(Clearable.SPOILED_BY) ? List.of() : was.spoiledBy());
    }

    /** The wish that it serves. */
    Optional<String> wish() {
        return before.wish().filter(name -> !clears(Clearable.WISH));
    }

    /** The photo of it. */
    Optional<String> picture() {
        return before.picture().filter(path -> !clears(Clearable.PICTURE));
    }

    /** Whatever else was said of it. */
    String note() {
        return clears(Clearable.NOTE) ? "" : before.note();
    }
}
