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

    static Document document(PlanReport report) {
        Document document = Document.headed(report.title()).drawn(() -> NightStrip.of(report));
        document.text(report.sheetsUsed() + " of " + report.sheets() + " sheets planned; camera "
                + report.camera());
        Set<String> served = report.nights().stream().flatMap(night -> night.windows().stream())
                .map(PlanReport.WindowRow::wish).collect(Collectors.toSet());
        for (PlanReport.PlannedNightRow night : report.nights()) {
            document.gap();
            addNight(document, night, served);
        }
        report.nights().forEach(night -> night.windows()
                .forEach(window -> document.add(SheetCard.of(report, night, window))));
        document.gap();
        document.heading(2, "Cautions");
        report.cautions().forEach(document::item);
        return document;
    }

    /** A night; of the wishes not served on it only those that no other night serves. */
    private static void addNight(Document document, PlanReport.PlannedNightRow night, Set<String> served) {
        document.heading(2, night.times().dates() + "  " + night.site() + "  (times in " + night.zone()
                + ")");
        document.text("dark " + spans(night, night.darkness()) + "; Moon up " + spans(night, night.moonUp()));
        if (night.windows().isEmpty()) {
            document.under("no window");
        } else {
            if (!night.course().isEmpty()) {
                document.figure("the night", () -> NightStrip.of(night));
            }
            document.add(windows(night));
        }
        night.notes().forEach(document::item);
        night.refused().stream().filter(refusal -> !served.contains(refusal.wish()))
                .forEach(refusal -> document.item("not " + refusal.wish() + ": " + refusal.reason()));
        if (!night.refused().isEmpty()) {
            Document refused = Document.part();
            night.refused().forEach(refusal -> refused.item(refusal.wish() + ": " + refusal.reason()));
            document.add(new Block.Aside("not on this night", refused));
        }
    }

    private static Table windows(PlanReport.PlannedNightRow night) {
        Table table = new Table(Table.words("open"), Table.words("close"), Table.numbers("", "h:min")
                .leaving(3),
                Table.numbers("sheet"), Table.words("wish"), Table.numbers("f/"), Table.numbers("az", "°")
                .leaving(5), Table.numbers("alt", "°").leaving(4), Table.numbers("tone", "stops").leaving(6),
                Table.numbers("trail", "mm").leaving(2), Table.numbers("stars").leaving(1));
        for (PlanReport.WindowRow window : night.windows()) {
            table.row(night.times().opens(window.openAt().toInstant()),
                    night.times().closes(window.closeAt().toInstant()),
                    lasts(window.openAt(), window.closeAt()), String.valueOf(window.sheet()), window.wish(),
                    Wording.plain(window.fNumber()),
                    Wording.bearing(window.azimuthDeg()) + " " + Wording.number(window.azimuthDeg(), 0),
                    Wording.number(window.altitudeDeg(), 0),
                    Wording.tone(window.skyToneStops(), window.skyToneSpreadStops()),
                    Wording.number(window.trailLengthMm(), 0), String.valueOf(window.recordedStars()));
            table.note(FilmWords.name(window.film(), window.fittedToSheets()) + ": " + window.reason());
            table.note(window.slack().words(night.times()));
            table.note(window.slack().lateWords(night.times()));
        }
        return table;
    }

    private static String lasts(OffsetDateTime openAt, OffsetDateTime closeAt) {
        long minutes = Duration.between(openAt, closeAt).toMinutes();
        return String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60);
    }

    private static String spans(PlanReport.PlannedNightRow night, List<PlanReport.Span> spans) {
        return spans.isEmpty() ? "never" : spans.stream()
                .map(span -> night.times().span(span.from().toInstant(), span.to().toInstant()))
                .collect(Collectors.joining(", "));
    }
}
