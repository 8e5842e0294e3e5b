package gloam.view;

import java.time.ZoneId;

/** Text of when a target stands high in darkness. */
final class HighText {

    private HighText() {
    }

    static Document document(HighReport report) {
        Document document = Document.headed(Wording.title(report.target()) + " at "
                + Wording.plain(report.altitudeDeg()) + "\u00b0 or higher in darkness");
        document.text("at " + SiteText.of(report.site()));
        document.gap();
        if (report.empty()) {
            document.under("in none of these nights");
            return document;
        }
        Table table = new Table(Table.words("night"), Table.words("from"), Table.words("to"),
                Table.numbers("highest", "\u00b0").leaving(4), Table.words("at").leaving(3),
                Table.words("towards").leaving(2),
                Table.words("night without the Moon").leaving(1));
        for (HighReport.HighNightRow night : report.nights()) {
            NightTimes times = new NightTimes(night.night(), report.site().zone());
            night.spans().forEach(span -> table.row(Wording.date(night.night()), times.opens(span.from().toInstant()),
                    times.closes(span.to().toInstant()), Wording.number(span.highestAltitudeDeg(), 0),
                    times.about(span.highestAt().toInstant()), Wording.bearing(span.azimuthDeg()),
                    Wording.hours(night.moonlessHours()) + " of " + Wording.hours(night.hours())));
        }
        document.add(table);
        return document;
    }
}
