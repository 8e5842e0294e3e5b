package gloam.view;

import gloam.journal.Entry;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;

/**
 * The sheets of the journal for other programs: as text a table of comma-separated values.
 *
 * @param generatedAt when the report was made
 * @param sheets      the sheets in the order in which they were first written
 */
public record JournalExportReport(OffsetDateTime generatedAt, List<SheetRow> sheets) implements JournalReport {

    /** The export of sheets. */
    public static JournalExportReport of(List<Entry> sheets, Instant now) {
        return new JournalExportReport(new SiteClock(ZoneOffset.UTC).at(now), sheets.stream().map(SheetRow::of).toList());
    }

    @Override
    public boolean empty() {
        return sheets.isEmpty();
    }
}
