package gloam.view;

import java.time.ZoneId;

/** Text of when a target stands high in darkness. */
final class HighText {

    private HighText() {
    }

    static Lines lines(HighReport report) {
        Lines lines = new Lines();
        lines.add(Wording.title(report.target()) + " at " + Wording.plain(report.altitudeDeg())
                + "\u00b0 or higher in darkness");
        lines.add("at " + PlaceText.of(report.place()));
        lines.add("");
        if (report.empty()) {
            lines.add("  in none of these nights");
            return lines;
        }
        Table table = new Table(2, Table.words("night"), Table.words("from"), Table.words("to"),
                Table.numbers("highest \u00b0"), Table.words("at"), Table.words("towards"),
                Table.words("night without the Moon"));
        for (HighReport.HighNightRow night : report.nights()) {
            NightTimes times = new NightTimes(night.night(), ZoneId.of(report.place().zone()));
            night.spans().forEach(span -> table.row(Wording.date(night.night()), times.opens(span.from().toInstant()),
                    times.closes(span.to().toInstant()), Wording.number(span.highestAltitudeDeg(), 0),
                    times.about(span.highestAt().toInstant()), Wording.bearing(span.azimuthDeg()),
                    Wording.hours(night.moonlessHours()) + " of " + Wording.hours(night.hours())));
        }
        lines.add(table);
        return lines;
    }
}
