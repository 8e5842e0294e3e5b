package gloam.view;

import gloam.view.JournalNextReport.ChoiceRow;
import java.util.stream.Collectors;

/** Text of the exposure to try next. */
final class JournalNextText {

    private JournalNextText() {
    }

    static Document document(JournalNextReport report) {
        Document document = Document.headed("Next sheet: " + Wording.fNumber(report.fNumber()) + ", " + Wording.exposure(report.exposureS()));
        document.text("because " + report.reason() + ".");
        document.gap();
        document.add(choices(report));
        document.gap();
        report.brackets().forEach(bracket -> document.under("bracket of " + bracket.sheets() + ": "
                + bracket.exposuresS().stream().map(Wording::exposure).collect(Collectors.joining(", ")) + " at "
                + Wording.fNumber(report.mostLikelyRight().fNumber()) + "; one is right in "
                + Math.round(100 * bracket.rightChance()) + " %"));
        document.gap();
        document.text("Film " + report.film() + " after " + report.used() + " sheets; wanted "
                + Wording.signed(report.toneStops(), 1) + " stops from the mid-tone, right within half a stop. The film alone "
                + "leaves a doubt of " + Wording.number(report.spreadStops(), 1) + " stops now. The light is taken as steady; "
                + "a bracket is for when no sheet can be looked at in between.");
        return document;
    }

    private static Table choices(JournalNextReport report) {
        Table table = new Table(Table.words(""), Table.numbers("f/"), Table.numbers("exposure"),
                Table.numbers("right", "%"), Table.numbers("right by the second", "%").leaving(2),
                Table.numbers("doubt after,", "stops").leaving(1));
        row(table, "most likely right", report.mostLikelyRight());
        row(table, "reveals most", report.mostTelling());
        return table;
    }

    private static void row(Table table, String name, ChoiceRow choice) {
        table.row(name, Wording.plain(choice.fNumber()), Wording.exposure(choice.exposureS()),
                Wording.number(100 * choice.rightChance(), 0), Wording.number(100 * choice.rightByTheSecondChance(), 0),
                Wording.number(choice.spreadAfterStops(), 1));
    }
}
