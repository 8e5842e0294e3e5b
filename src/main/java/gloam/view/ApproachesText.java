package gloam.view;

/** Text of approaches. */
final class ApproachesText {

    private ApproachesText() {
    }

    static Lines lines(ApproachesReport report) {
        Lines lines = new Lines();
        lines.add("Closest approaches");
        lines.add("at " + PlaceText.of(report.place()));
        lines.add("");
        if (report.approaches().isEmpty()) {
            lines.add("  none as close as that");
            return lines;
        }
        Table table = new Table(2, Table.words("date"), Table.words("time"), Table.words("bodies"),
                Table.numbers("apart \u00b0"), Table.numbers("altitude \u00b0"), Table.words("towards"),
                Table.numbers("Sun \u00b0"));
        for (ApproachesReport.ApproachRow row : report.approaches()) {
            table.row(Wording.date(row.at().plusSeconds(30).toLocalDate()), Wording.minute(row.at()),
                    Wording.title(row.body()) + " and " + Wording.title(row.other()),
                    Wording.number(row.separationDeg(), 2), Wording.number(row.apparentAltitudeDeg(), 0),
                    Wording.bearing(row.azimuthDeg()), Wording.number(row.sunAltitudeDeg(), 0));
        }
        lines.add(table);
        return lines;
    }
}
