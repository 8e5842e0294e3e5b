package gloam.view;

/** Text of the spans in which a trail runs at a wanted angle. */
final class LevelText {

    private LevelText() {
    }

    static Lines lines(LevelReport report) {
        LevelReport.Question question = report.question();
        Lines lines = new Lines();
        lines.add("Trail of " + Wording.title(question.body()) + " within " + Wording.plain(question.withinDeg())
                + "° of " + (question.wantedDeg() == 0 ? "level" : Wording.plain(question.wantedDeg()) + "°")
                + ", nights of " + question.from() + " to " + question.to());
        lines.add("at " + PlaceText.of(report.site()));
        lines.add("");
        if (report.spans().isEmpty()) {
            lines.add("  never in these nights in the dark and above the skyline");
            return lines;
        }
        Table table = new Table(2, Table.words("night"), Table.words("from"), Table.words("to"), Table.words("best"),
                Table.numbers("off °"), Table.numbers("azimuth °"), Table.numbers("altitude °"),
                Table.numbers("length mm"), Table.numbers("sagitta mm"), Table.words("Moon"));
        for (LevelReport.SpanRow span : report.spans()) {
            table.row(Wording.date(span.night()), Wording.minuteAfter(span.from()), Wording.minuteBefore(span.to()),
                    Wording.minute(span.bestAt()), Wording.signed(span.offDeg(), 1),
                    Wording.direction(span.azimuthDeg()), Wording.number(span.altitudeDeg(), 1),
                    Wording.number(span.lengthMm(), 1, "–"), Wording.number(span.sagittaMm(), 2, "–"),
                    span.moonUp() ? "up" : "down");
        }
        lines.add(table);
        lines.add("");
        lines.add("Aim, length and sagitta are those of a camera that is set at the best moment and "
                + "stays open from the first time to the last. Dark means the Sun below −18°.");
        return lines;
    }
}
