package gloam.view;

/** Text of ranked nights. */
final class NightsText {

    private NightsText() {
    }

    static Document document(NightsReport report) {
        Document document = Document.named("Nights").figure("calendar", () -> NightCalendar.of(report));
        if (!report.stays().isEmpty()) {
            document.heading(2, "Stays, best first");
            document.gap();
            document.add(stays(report));
            document.gap();
        }
        document.heading(2, "Nights, best first");
        document.gap();
        document.add(nights(report));
        return document;
    }

    private static Table stays(NightsReport report) {
        Table table = new Table(Table.numbers("rank"), Table.words("first night"), Table.words("last night"),
                Table.words("site").leaving(1), Table.numbers("score"));
        int rank = 1;
        for (NightsReport.StayRow stay : report.stays()) {
            table.row(String.valueOf(rank++), Wording.date(stay.from()), Wording.date(stay.to()), stay.site(),
                    Wording.number(stay.score(), 2));
        }
        return table;
    }

    private static Table nights(NightsReport report) {
        Table table = new Table(Table.numbers("rank"), Table.words("night"), Table.words("site"),
                Table.numbers("score"), Table.words("why"));
        int rank = 1;
        for (NightRow night : report.nights()) {
            table.row(String.valueOf(rank++), Wording.date(night.night()), night.site(),
                    Wording.number(night.score(), 2), night.reason());
        }
        return table;
    }
}
