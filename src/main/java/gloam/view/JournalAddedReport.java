package gloam.view;

import gloam.journal.Entry;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

/**
 * An entry added to the journal. It is on disk before this is reported.
 *
 * @param generatedAt when the report was made
 * @param journal     the journal's file
 * @param id          the entry's name
 * @param already     whether the journal had it already, so that nothing was added
 * @param corrects    the entry that was corrected
 * @param withdrawn   whether the sheet was withdrawn
 * @param changes     what a correction changed
 * @param sheet       the sheet
 */
public record JournalAddedReport(OffsetDateTime generatedAt, String journal, String id, boolean already,
                                 Optional<String> corrects, boolean withdrawn, List<EntryChange> changes,
                                 SheetRow sheet) implements Report {

    /** Whether it is a correction. */
    boolean corrected() {
        return corrects.isPresent();
    }

    /** Reports an entry; {@code before} is the entry before a correction. */
    public static JournalAddedReport of(String journal, Entry entry, boolean already, Optional<Entry> before,
                                        Instant now) {
        return new JournalAddedReport(new SiteClock(ZoneOffset.UTC).at(now), journal, entry.id(), already,
                before.map(Entry::id), entry.withdrawn(),
                before.map(last -> EntryChange.between(last, entry)).orElse(List.of()), SheetRow.of(entry));
    }

    @Override
    public Document document() {
        String entry = "entry " + id() + " of " + journal();
        Document document = Document.named("Journal");
        document.text(already() ? "Nothing added: " + entry + " says so already."
                        + (corrected() ? "" : " A note keeps two alike apart.")
                : (corrected() ? "Corrected " : "Added as ") + entry
                        + (withdrawn() ? "; the sheet is taken out." : "."));
        changes().forEach(change -> document.under(change.text()));
        if (!withdrawn()) {
            document.add(SheetRow.table(List.of(sheet())));
        }
        return document;
    }
}
