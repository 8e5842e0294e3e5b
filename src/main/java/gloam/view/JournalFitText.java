package gloam.view;

import gloam.journal.Estimate;

/** Text of a film fitted to the journal. */
final class JournalFitText {

    private JournalFitText() {
    }

    static Document document(JournalFitReport report) {
        Document document = Document.headed("Film " + report.film() + report.batch().map(batch -> ", " + batch).orElse("") + ": "
                + (report.used() == 1 ? "1 sheet" : report.used() + " sheets") + " used, "
                + report.leftOut().size() + " left out");
        document.gap();
        document.under("slower than rated by " + stops(report.speedOffsetStops()) + " stops (published "
                + stops(report.publishedSpeedOffsetStops()) + ")");
        document.under("reciprocity exponent " + exponent(report.exponent()) + " (published "
                + exponent(report.publishedExponent()) + ")");
        document.under("correlation of the two " + Wording.signed(report.correlation(), 2));
        document.gap();
        document.figure("the fitted curve", () -> JournalCurveDrawing.of(report));
        document.add(situations(report));
        document.add(sheets(report));
        document.gap();
        document.text("Spreads are standard deviations; a time lies outside its least and most once in "
                + "twenty. plan and expose use this film when given --journal.");
        return document;
    }

    private static Table situations(JournalFitReport report) {
        Table table = new Table(Table.words("light"), Table.numbers("metered").leaving(2),
                Table.numbers("published"),
                Table.numbers("fitted"), Table.numbers("least"), Table.numbers("most"), Table.numbers("change", "stops").leaving(3),
                Table.numbers("±", "stops").leaving(3), Table.numbers("before").leaving(1));
        report.situations().forEach(light -> table.row(light.name(), Wording.exposure(light.meteredS()),
                Wording.exposure(light.publishedS()), Wording.exposure(light.fittedS()), Wording.exposure(light.leastS()),
                Wording.exposure(light.mostS()), Wording.signed(light.changeStops(), 1),
                Wording.number(light.spreadStops(), 1), Wording.number(light.spreadBeforeStops(), 1)));
        return table;
    }

    private static Document sheets(JournalFitReport report) {
        Document document = Document.part();
        if (!report.contradicted().isEmpty() || !report.leftOut().isEmpty()) {
            document.gap();
        }
        report.contradicted().forEach(sheet -> document.under("entry " + sheet.id() + " is contradicted by the others in its "
                + sheet.what() + " (wrong with a chance of " + Math.round(100 * sheet.chance()) + " %); look again"));
        report.leftOut().forEach(sheet -> document.under("entry " + sheet.id() + " left out: " + sheet.reason()));
        return document;
    }

    private static String stops(Estimate estimate) {
        return Wording.signed(estimate.mean(), 2) + " ± " + Wording.number(estimate.sd(), 2);
    }

    private static String exponent(Estimate estimate) {
        return Wording.number(estimate.mean(), 2) + " ± " + Wording.number(estimate.sd(), 2);
    }
}
