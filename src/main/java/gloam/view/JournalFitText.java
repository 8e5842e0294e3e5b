package gloam.view;

import gloam.view.JournalFitReport.EstimateRow;

/** Text of a film fitted to the journal. */
final class JournalFitText {

    private JournalFitText() {
    }

    static Lines lines(JournalFitReport report) {
        Lines lines = new Lines();
        lines.add("Film " + report.film() + report.batch().map(batch -> ", " + batch).orElse("") + ": "
                + (report.used() == 1 ? "1 sheet" : report.used() + " sheets") + " used, "
                + report.leftOut().size() + " left out");
        lines.add("");
        lines.add("  slower than rated by " + stops(report.speedOffsetStops()) + " stops (published "
                + stops(report.publishedSpeedOffsetStops()) + ")");
        lines.add("  reciprocity exponent " + exponent(report.exponent()) + " (published "
                + exponent(report.publishedExponent()) + ")");
        lines.add("  correlation of the two " + Wording.signed(report.correlation(), 2));
        lines.add("");
        lines.add(situations(report));
        lines.add(sheets(report));
        lines.add("");
        lines.add("Spreads are standard deviations; a time lies outside its least and most once in "
                + "twenty. plan and expose use this film when given --journal.");
        return lines;
    }

    private static Table situations(JournalFitReport report) {
        Table table = new Table(2, Table.words("light"), Table.numbers("metered"), Table.numbers("published"),
                Table.numbers("fitted"), Table.numbers("least"), Table.numbers("most"), Table.numbers("change stops"),
                Table.numbers("± stops"), Table.numbers("before"));
        report.situations().forEach(light -> table.row(light.name(), Wording.exposure(light.meteredS()),
                Wording.exposure(light.publishedS()), Wording.exposure(light.fittedS()), Wording.exposure(light.leastS()),
                Wording.exposure(light.mostS()), Wording.signed(light.changeStops(), 1),
                Wording.number(light.spreadStops(), 1), Wording.number(light.spreadBeforeStops(), 1)));
        return table;
    }

    private static Lines sheets(JournalFitReport report) {
        Lines lines = new Lines();
        if (!report.contradicted().isEmpty() || !report.leftOut().isEmpty()) {
            lines.add("");
        }
        report.contradicted().forEach(sheet -> lines.add("  entry " + sheet.id() + " is contradicted by the others in its "
                + sheet.what() + " (wrong with a chance of " + Math.round(100 * sheet.chance()) + " %); look again"));
        report.leftOut().forEach(sheet -> lines.add("  entry " + sheet.id() + " left out: " + sheet.reason()));
        return lines;
    }

    private static String stops(EstimateRow estimate) {
        return Wording.signed(estimate.mean(), 2) + " ± " + Wording.number(estimate.sd(), 2);
    }

    private static String exponent(EstimateRow estimate) {
        return Wording.number(estimate.mean(), 2) + " ± " + Wording.number(estimate.sd(), 2);
    }
}
