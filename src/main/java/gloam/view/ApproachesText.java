package gloam.view;

/** Text of approaches. */
final class ApproachesText {

    private ApproachesText() {
    }

    static Document document(ApproachesReport report) {
        Document document = Document.headed("Closest approaches");
        document.text("at " + SiteText.of(report.site()));
        document.gap();
        if (report.approaches().isEmpty()) {
            document.under("none as close as that");
            return document;
        }
        Table table = new Table(Table.words("date"), Table.words("time"), Table.words("bodies"),
                Table.numbers("apart", "\u00b0"), Table.numbers("altitude", "\u00b0").leaving(3), Table.words("towards").leaving(2),
                Table.numbers("Sun", "\u00b0").leaving(1));
        for (ApproachesReport.ApproachRow row : report.approaches()) {
            table.row(Wording.date(row.at().plusSeconds(30).toLocalDate()), Wording.minute(row.at()),
                    Wording.title(row.body()) + " and " + Wording.title(row.other()),
                    Wording.number(row.separationDeg(), 2), Wording.number(row.apparentAltitudeDeg(), 0),
                    Wording.bearing(row.azimuthDeg()), Wording.number(row.sunAltitudeDeg(), 0));
        }
        document.add(table);
        return document;
    }
}
