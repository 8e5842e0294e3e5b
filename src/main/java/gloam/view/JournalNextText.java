package gloam.view;

import gloam.view.JournalNextReport.ChoiceRow;
import java.util.stream.Collectors;

/** Text of the exposure to try next. */
final class JournalNextText {

    private JournalNextText() {
    }

    static Lines lines(JournalNextReport report) {
        Lines lines = new Lines();
        lines.add("Next sheet: " + Wording.fNumber(report.fNumber()) + ", " + Wording.exposure(report.exposureS()));
        lines.add("because " + report.reason() + ".");
        lines.add("");
        lines.add(choices(report));
        lines.add("");
        report.brackets().forEach(bracket -> lines.add("  bracket of " + bracket.sheets() + ": "
                + bracket.exposuresS().stream().map(Wording::exposure).collect(Collectors.joining(", ")) + " at "
                + Wording.fNumber(report.mostLikelyRight().fNumber()) + "; one is right in "
                + Math.round(100 * bracket.rightChance()) + " %"));
        lines.add("");
        lines.add("Film " + report.film() + " after " + report.used() + " sheets; wanted "
                + Wording.signed(report.toneStops(), 1) + " stops from the mid-tone, right within half a stop. The film alone "
                + "leaves a doubt of " + Wording.number(report.spreadStops(), 1) + " stops now. The light is taken as steady; "
                + "a bracket is for when no sheet can be looked at in between.");
        return lines;
    }

    private static Table choices(JournalNextReport report) {
        Table table = new Table(2, Table.words(""), Table.numbers("f/"), Table.numbers("exposure"),
                Table.numbers("right %"), Table.numbers("right by the second %"), Table.numbers("doubt after, stops"));
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
