package gloam.journal;

import java.time.Instant;
import java.util.Optional;

/**
 * One entry of the journal: a sheet, or a correction of one.
 *
 * @param id        its name in the journal
 * @param writtenAt when it was written
 * @param corrects  the entry that it replaces
 * @param withdrawn whether the sheet is withdrawn
 * @param exposed   how the sheet was exposed
 * @param outcome   how it came out
 * @param note      any remark, often empty
 */
public record Entry(String id, Instant writtenAt, Optional<String> corrects, boolean withdrawn,
        Exposed exposed,
                    Outcome outcome, String note) {

    /** The same entry under another name. */
    public Entry named(String newId) {
        return new Entry(newId, writtenAt, corrects, withdrawn, exposed, outcome, note);
    }
}
