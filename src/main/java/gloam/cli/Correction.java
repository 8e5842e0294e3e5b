package gloam.cli;

import gloam.answer.SheetLit;
import gloam.journal.Entry;
import java.util.List;

/**
 * What a correction begins with.
 *
 * @param before  the last word on the sheet
 * @param cleared what is taken back of it
 */
record Correction(Entry before, List<Clearable> cleared) {

    /** The last word without what is taken back. */
    Entry kept() {
        Entry kept = before;
        for (Clearable what : cleared) {
            kept = what.without().apply(kept);
        }
        return kept;
    }

    /** The same as the light of a sheet asks for it. */
    SheetLit.LastWord lastWord() {
        return new SheetLit.LastWord(before.exposed(), kept().exposed(),
                cleared.contains(Clearable.SITE) || cleared.contains(Clearable.AIM));
    }
}
