package gloam.view;

import gloam.journal.Entry;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

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
     * @param differs what the page says of it otherwise, which changes nothing
     * @param sheet   the sheet
     */
    public record HandedRow(int number, String wish, String id, boolean already, List<EntryChange> differs,
            SheetRow sheet) {

        /** What a page knows of a sheet. */
        private static final Set<String> OF_PAGE = Set.of("open", "note");

        /** The sheet of an entry; {@code handed} is what the page says of it, where it was there before. */
        public static HandedRow of(int number, String wish, Entry entry, boolean already,
                Optional<Entry> handed) {
            return new HandedRow(number, wish, entry.id(), already,
                    handed.map(page -> EntryChange.between(entry, page)).orElse(List.of()).stream()
                            .filter(change -> OF_PAGE.contains(change.what())).toList(), SheetRow.of(entry));
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
        exposed.stream().filter(row -> !row.differs.isEmpty()).forEach(row -> document.item("sheet "
                + row.number + ", " + row.wish + ", stays as the journal has it; the page says otherwise: "
                + row.differs.stream().map(EntryChange::text).collect(Collectors.joining("; "))
                + ". Change it with gloam journal add --corrects " + row.id));
        left.forEach(row -> document.item("sheet " + row.number + ", " + row.wish + ": " + row.why
                + ", not in the journal" + (row.note.isEmpty() ? "" : " (" + row.note + ")")));
        return document;
    }
}
