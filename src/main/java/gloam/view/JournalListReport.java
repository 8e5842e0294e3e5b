package gloam.view;

import gloam.journal.Entry;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;

/**
 * The sheets of the journal, each as last corrected.
 *
 * @param generatedAt when the report was made
 * @param sheets      the sheets in the order in which they were first written
 */
public record JournalListReport(OffsetDateTime generatedAt, List<SheetRow> sheets) implements Report {

    static final String NO_SHEET = "The journal has no sheet of that kind.";

    /** Reports sheets. */
    public static JournalListReport of(List<Entry> sheets, Instant now) {
        return new JournalListReport(new SiteClock(ZoneOffset.UTC).at(now), sheets.stream().map(SheetRow::of)
                .toList());
    }

    @Override
    public boolean empty() {
        return sheets.isEmpty();
    }

    @Override
    public Document document() {
        Document document = Document.named("Sheets of the journal");
        return empty() ? document.text(NO_SHEET) : document.add(SheetRow.table(sheets));
    }
}
