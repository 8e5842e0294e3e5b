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
 * @param wish      the wish of a trip that it serves, by its name, if noted
 */
public record Entry(String id, Instant writtenAt, Optional<String> corrects, boolean withdrawn,
        Exposed exposed,
                    Outcome outcome, String note, Optional<String> wish) {

    /** Whether it is a picture as it was wished, as far as is known: nothing spoiled it, and it was kept. */
    public boolean serves() {
        return outcome.kept().orElse(true) && outcome.spoiledBy().isEmpty();
    }

    /** The same entry under another name. */
    public Entry named(String newId) {
        return new Entry(newId, writtenAt, corrects, withdrawn, exposed, outcome, note, wish);
    }
}
