package gloam.journal;

import java.time.Instant;
import java.util.Optional;

/**
 * One entry of the journal: a sheet, or a later word on one.
 *
 * @param id        its name in the journal
 * @param writtenAt when it was written
 * @param corrects  the entry whose place it takes
 * @param withdrawn whether that sheet is taken out altogether
 * @param exposed   how the sheet was exposed
 * @param outcome   how it came out
 * @param note      whatever else, often empty
 */
public record Entry(String id, Instant writtenAt, Optional<String> corrects, boolean withdrawn, Exposed exposed,
                    Outcome outcome, String note) {

    /** The same entry under another name. */
    public Entry named(String newId) {
        return new Entry(newId, writtenAt, corrects, withdrawn, exposed, outcome, note);
    }
}
