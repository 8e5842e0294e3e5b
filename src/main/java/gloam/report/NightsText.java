package gloam.report;

import java.util.ArrayList;
import java.util.List;

/** Text of ranked nights. */
final class NightsText {

    private NightsText() {
    }

    static List<String> lines(NightsReport report) {
        List<String> lines = new ArrayList<>();
        if (!report.stays().isEmpty()) {
            lines.add("Stays, best first");
            lines.add("");
            lines.addAll(stays(report).lines());
            lines.add("");
        }
        lines.add("Nights, best first");
        lines.add("");
        lines.addAll(nights(report).lines());
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
