package gloam.view;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Text of what the journal's commands answer. */
final class JournalText {

    private static final String NO_SHEET = "The journal has no sheet of that kind.";

    private JournalText() {
    }

    static Document document(JournalReport report) {
        if (report instanceof JournalAddedReport added) {
            return added(added);
        }
        if (report instanceof JournalListReport list) {
            return list(list.sheets());
        }
        if (report instanceof JournalStatsReport stats) {
            return stats(stats);
        }
        if (report instanceof JournalGuideReport guide) {
            return guide(guide);
        }
        return report instanceof JournalFitReport fit ? JournalFitText.document(fit)
                : JournalNextText.document((JournalNextReport) report);
    }

    private static Document added(JournalAddedReport report) {
        String entry = "entry " + report.id() + " of " + report.journal();
        Document document = Document.named("Journal");
        document.text(report.already() ? "Nothing added: " + entry + " says so already."
                        + (report.corrected() ? "" : " A note keeps two alike apart.")
                : "Added as " + entry + report.corrects().map(id -> ", in place of entry " + id).orElse("")
                        + (report.withdrawn() ? "; the sheet is taken out." : "."));
        report.changes().forEach(change -> document.under(change.text()));
        if (!report.withdrawn()) {
            document.add(sheets(List.of(report.sheet())));
        }
        return document;
    }

    private static Document list(List<SheetRow> sheets) {
        Document document = Document.named("Sheets of the journal");
        return sheets.isEmpty() ? document.text(NO_SHEET) : document.add(sheets(sheets));
    }

    private static Table sheets(List<SheetRow> rows) {
        Table table = new Table(Table.numbers("entry"), Table.words("opened"), Table.numbers("open").leaving(4),
                Table.numbers("f/"), Table.words("film").leaving(2), Table.words("site").leaving(1), Table.words("sky tone"),
                Table.numbers("to", "mag").leaving(3), Table.words("kept").leaving(5));
        for (SheetRow row : rows) {
            table.row(row.id(), row.openAt().toLocalDate() + " " + Wording.minute(row.openAt()),
                    Wording.exposure(row.openS()), Wording.plain(row.fNumber()),
                    row.film() + (row.batch().isEmpty() ? "" : ", " + row.batch()), row.site().orElse(""), row.verdict(),
                    row.faintestMag().isPresent() ? Wording.number(row.faintestMag().getAsDouble(), 1) : "",
                    row.kept().map(kept -> kept ? "yes" : "no").orElse(""));
            if (!row.spoiledBy().isEmpty()) {
                table.note("spoiled by " + String.join(", ", row.spoiledBy()).replace('-', ' '));
            }
            if (!row.note().isEmpty()) {
                table.note(row.note());
            }
        }
        return table;
    }

    private static Document stats(JournalStatsReport report) {
        Document document = Document.named("Keepers and what spoils sheets");
        if (report.empty()) {
            return document.text(NO_SHEET);
        }
        Table table = new Table(Table.words(""), Table.numbers("sheets"), Table.numbers("kept"),
                Table.numbers("kept", "%").leaving(3), Table.numbers("undecided").leaving(1),
                Table.words("spoiled by").leaving(2));
        row(table, report.all());
        report.packs().forEach(group -> row(table, group));
        report.films().forEach(group -> row(table, group));
        report.seasons().forEach(group -> row(table, group));
        return document.add(table);
    }

    private static void row(Table table, JournalStatsReport.Group group) {
        boolean decided = group.sheets() > group.undecided();
        table.row(group.name(), String.valueOf(group.sheets()), String.valueOf(group.kept()),
                decided ? Wording.number(100 * group.keptFraction(), 0) : "-", String.valueOf(group.undecided()),
                group.spoiledBy().stream().map(spoiled -> spoiled.by() + " " + spoiled.sheets())
                        .collect(Collectors.joining(", ")));
    }

    private static Document guide(JournalGuideReport report) {
        Table table = new Table(Table.words("word"), Table.numbers("", "stops"), Table.numbers("reflects", "%").leaving(1),
                Table.words("how to recognize it"));
        report.words().forEach(word -> table.row(word.word(), stops(word), Wording.number(100 * word.reflectance(), 0),
                word.guide()));
        Document document = Document.headed("The tone of the sky on the finished picture, from its mid-tone")
                .figure("the words as greys", () -> ToneGuideDrawing.of(report)).gap();
        document.add(table);
        document.gap();
        document.text("Judge in daylight, dry, away from trails and the frame's edge; a negative by its "
                + "print. A blank sheet is \"black\", and counts too. Ask for svg to get a grey patch for each word.");
        return document;
    }

    /** Between what stops a word lies. */
    static String stops(JournalGuideReport.WordRow word) {
        if (word.aboveStops().isEmpty()) {
            return "below " + stops(word.upToStops());
        }
        return word.upToStops().isEmpty() ? "above " + stops(word.aboveStops())
                : stops(word.aboveStops()) + " … " + stops(word.upToStops());
    }

    private static String stops(OptionalDouble bound) {
        return Wording.signed(bound.getAsDouble(), 1);
    }
}
