package gloam.view;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** Text of a timetable, to be followed in the field. */
final class PlanText {

    private PlanText() {
    }

    static Lines lines(PlanReport report) {
        Lines lines = new Lines();
        lines.add(report.title());
        lines.add(report.sheetsUsed() + " of " + report.sheets() + " sheets planned; camera " + report.camera());
        Set<String> served = report.nights().stream().flatMap(night -> night.windows().stream())
                .map(PlanReport.WindowRow::wish).collect(Collectors.toSet());
        for (PlanReport.NightRow night : report.nights()) {
            lines.add("");
            addNight(lines, night, served);
        }
        lines.add("");
        lines.add("Cautions");
        report.cautions().forEach(caution -> addItem(lines, caution));
        return lines;
    }

    /** A night; of the wishes not served on it only those that no other night serves. */
    private static void addNight(Lines lines, PlanReport.NightRow night, Set<String> served) {
        lines.add(night.times().dates() + "  " + night.site() + "  (times in " + night.zone() + ")");
        lines.add("dark " + spans(night, night.darkness()) + "; Moon up " + spans(night, night.moonUp()));
        if (night.windows().isEmpty()) {
            lines.add("  no window");
        } else {
            lines.add(windows(night));
        }
        night.notes().forEach(note -> addItem(lines, note));
        night.refused().stream().filter(refusal -> !served.contains(refusal.wish()))
                .forEach(refusal -> addItem(lines, "not " + refusal.wish() + ": " + refusal.reason()));
    }

    private static Table windows(PlanReport.NightRow night) {
        Table table = new Table(2, Table.words("open"), Table.words("close"), Table.numbers("h:min"),
                Table.numbers("sheet"), Table.words("wish"), Table.numbers("f/"), Table.numbers("az °"),
                Table.numbers("alt °"), Table.numbers("tone stops"), Table.numbers("trail mm"),
                Table.numbers("stars"));
        for (PlanReport.WindowRow window : night.windows()) {
            table.row(night.times().opens(window.openAt().toInstant()),
                    night.times().closes(window.closeAt().toInstant()),
                    lasts(window.openAt(), window.closeAt()), String.valueOf(window.sheet()), window.wish(),
                    Wording.plain(window.fNumber()),
                    Wording.bearing(window.azimuthDeg()) + " " + Wording.number(window.azimuthDeg(), 0),
                    Wording.number(window.altitudeDeg(), 0),
                    Wording.signed(window.skyToneStops(), 1) + " ± " + Wording.number(window.skyToneSpreadStops(), 1),
                    Wording.number(window.trailLengthMm(), 0), String.valueOf(window.recordedStars()));
            table.note(Wording.film(window.film(), window.fittedToSheets()) + ": " + window.reason());
        }
        return table;
    }

    private static String lasts(OffsetDateTime openAt, OffsetDateTime closeAt) {
        long minutes = Duration.between(openAt, closeAt).toMinutes();
        return String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60);
    }

    private static String spans(PlanReport.NightRow night, List<PlanReport.Span> spans) {
        return spans.isEmpty() ? "never" : spans.stream()
                .map(span -> night.times().span(span.from().toInstant(), span.to().toInstant()))
                .collect(Collectors.joining(", "));
    }

    private static void addItem(Lines lines, String text) {
        lines.add("  - ", text);
    }
}
