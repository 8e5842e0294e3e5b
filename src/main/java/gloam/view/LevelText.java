package gloam.view;

/** Text of the spans in which a trail runs at a wanted angle. */
final class LevelText {

    private LevelText() {
    }

    static Document document(LevelReport report) {
        LevelReport.LevelQuestion question = report.question();
        Document document = Document.headed("Trail of " + Wording.title(question.body()) + " within " + Wording.plain(question.withinDeg())
                + "° of " + (question.wantedDeg() == 0 ? "level" : Wording.plain(question.wantedDeg()) + "°")
                + ", nights of " + question.from() + " to " + question.to());
        document.text("at " + SiteText.of(report.site()));
        document.gap();
        if (report.spans().isEmpty()) {
            document.under("never in these nights in the dark and above the skyline");
            return document;
        }
        Table table = new Table(Table.words("night"), Table.words("from"), Table.words("to"), Table.words("best"),
                Table.numbers("off", "°").leaving(3), Table.numbers("azimuth", "°").leaving(5),
                Table.numbers("altitude", "°").leaving(5),
                Table.numbers("length", "mm").leaving(2), Table.numbers("sagitta", "mm").leaving(1),
                Table.words("Moon").leaving(4));
        for (LevelReport.LevelRow span : report.spans()) {
            table.row(Wording.date(span.night()), Wording.minuteAfter(span.from()), Wording.minuteBefore(span.to()),
                    Wording.minute(span.bestAt()), Wording.signed(span.offDeg(), 1),
                    Wording.direction(span.azimuthDeg()), Wording.number(span.altitudeDeg(), 1),
                    Wording.number(span.lengthMm(), 1, "–"), Wording.number(span.sagittaMm(), 2, "–"),
                    span.moonUp() ? "up" : "down");
        }
        document.add(table);
        document.gap();
        document.text("Aim, length and sagitta are those of a camera that is set at the best moment and "
                + "stays open from the first time to the last. Dark means the Sun below −18°.");
        return document;
    }
}
