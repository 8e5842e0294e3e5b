package gloam.view;

/** Text of ranked nights. */
final class NightsText {

    private NightsText() {
    }

    static Lines lines(NightsReport report) {
        Lines lines = new Lines();
        if (!report.stays().isEmpty()) {
            lines.add("Stays, best first");
            lines.add("");
            lines.add(stays(report));
            lines.add("");
        }
        lines.add("Nights, best first");
        lines.add("");
        lines.add(nights(report));
        return lines;
    }

    private static Table stays(NightsReport report) {
        Table table = new Table(2, Table.numbers("rank"), Table.words("first night"), Table.words("last night"),
                Table.words("site"), Table.numbers("score"));
        int rank = 1;
        for (NightsReport.StayRow stay : report.stays()) {
            table.row(String.valueOf(rank++), Wording.date(stay.from()), Wording.date(stay.to()), stay.site(),
                    Wording.number(stay.score(), 2));
        }
        return table;
    }

    private static Table nights(NightsReport report) {
        Table table = new Table(2, Table.numbers("rank"), Table.words("night"), Table.words("site"),
                Table.numbers("score"), Table.words("why"));
        int rank = 1;
        for (NightRow night : report.nights()) {
            table.row(String.valueOf(rank++), Wording.date(night.night()), night.site(),
                    Wording.number(night.score(), 2), night.reason());
        }
        return table;
    }
}
