package gloam.view;

import gloam.journal.Entry;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;

/**
 * The sheets that a timetable's page handed over to the journal. They are on disk before this is reported.
 *
 * @param generatedAt when the report was made
 * @param journal     the journal's file
 * @param exposed     the sheets that were exposed, now in the journal
 * @param left        the sheets that were not, which the journal does not keep
 */
public record JournalPageReport(OffsetDateTime generatedAt, String journal, List<HandedRow> exposed,
        List<LeftRow> left) implements Report {

    /**
     * A sheet that was exposed.
     *
     * @param number  number of the sheet in the timetable
     * @param wish    the wish it serves
     * @param id      the entry's name
     * @param already whether the journal had it already, so that nothing was added
     * @param sheet   the sheet
     */
    public record HandedRow(int number, String wish, String id, boolean already, SheetRow sheet) {

        /** The sheet of an entry. */
        public static HandedRow of(int number, String wish, Entry entry, boolean already) {
            return new HandedRow(number, wish, entry.id(), already, SheetRow.of(entry));
        }
    }

    /**
     * A sheet that was not exposed.
     *
     * @param number number of the sheet in the timetable
     * @param wish   the wish it would have served
     * @param why    why not
     * @param note   any remark, often empty
     */
    public record LeftRow(int number, String wish, String why, String note) {
    }

    /** Reports what was handed over. */
    public static JournalPageReport of(String journal, List<HandedRow> exposed, List<LeftRow> left,
            Instant now) {
        return new JournalPageReport(new SiteClock(ZoneOffset.UTC).at(now), journal, exposed, left);
    }

    @Override
    public Document document() {
        int already = (int) exposed.stream().filter(HandedRow::already).count();
        Document document = Document.named("Journal");
        document.text("Added " + Wording.count(exposed.size() - already, "sheet") + " to " + journal
                + (already == 0 ? "." : "; " + Wording.count(already, "sheet") + " it had already."));
        if (!exposed.isEmpty()) {
            document.add(SheetRow.table(exposed.stream().map(HandedRow::sheet).toList()));
        }
        left.forEach(row -> document.item("sheet " + row.number + ", " + row.wish + ": " + row.why
                + ", not in the journal" + (row.note.isEmpty() ? "" : " (" + row.note + ")")));
        return document;
    }
}
