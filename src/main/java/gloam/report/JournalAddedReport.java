package gloam.report;

import gloam.journal.Entry;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * What was put into the journal; it is on disk when this is told.
 *
 * @param generatedAt when the report was made
 * @param journal     the journal's file
 * @param id          the entry's name
 * @param already     whether the journal said so before and nothing was added
 * @param corrects    the entry whose place it takes
 * @param withdrawn   whether the sheet was taken out
 * @param sheet       the sheet
 */
public record JournalAddedReport(OffsetDateTime generatedAt, String journal, String id, boolean already,
                                 Optional<String> corrects, boolean withdrawn, SheetRow sheet) implements JournalReport {

    /** The report of an entry added. */
    public static JournalAddedReport of(String journal, Entry entry, boolean already, Instant now) {
        return new JournalAddedReport(new SiteClock(ZoneOffset.UTC).asked(now), journal, entry.id(), already,
                entry.corrects(), entry.withdrawn(), SheetRow.of(entry));
    }
}
