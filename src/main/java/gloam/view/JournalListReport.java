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
        if (empty()) {
            return document.text(NO_SHEET);
        }
        document.figure("the tone of the sky by exposure time", made -> SheetTonesDrawing.of(this, made));
        document.add(SheetRow.table(sheets));
        Document details = Document.part();
        for (SheetRow sheet : sheets) {
            sheet.picture().ifPresent(path -> details.add(new Block.Link("Entry " + sheet.id() + ": picture",
                    path)));
            sheet.proof().ifPresent(command -> details.text("Entry " + sheet.id() + ": " + command));
        }
        return details.blocks().isEmpty() ? document
                : document.add(new Block.Aside("pictures, and commands of computed pictures", details));
    }
}
