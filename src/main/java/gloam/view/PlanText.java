package gloam.view;

import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Text of a timetable, to be followed in the field. */
final class PlanText {

    private PlanText() {
    }

    static Document document(PlanReport report) {
        Document document = Document.headed(report.title()).drawn(made -> NightStrip.of(report, made));
        document.text(report.sheetsUsed() + " of " + report.sheets() + " sheets planned; "
                + (report.cameras().size() == 1 ? "camera " : "cameras ")
                + String.join(", ", report.cameras()));
        document.add(new Block.Live(report.nights().stream().filter(night -> !night.windows().isEmpty())
                .map(night -> evening(report, night)).toList(), report::asData));
        for (PlanReport.PlannedNightRow night : report.nights()) {
            if (night.nothing().isEmpty()) {
                document.gap();
                addNight(document, report, night);
            }
        }
        addIfClears(document, report);
        addNothing(document, report);
        addUnserved(document, report);
        document.gap();
        document.heading(2, "Cautions");
        report.cautions().forEach(document::item);
        return document;
    }

    private static Block.Evening evening(PlanReport report, PlanReport.PlannedNightRow night) {
        Map<String, String> cards = new LinkedHashMap<>();
        night.windows().forEach(window -> cards.put(SheetCard.id(window),
                night.times().exposure(window.openAt().toInstant(), window.closeAt().toInstant()) + " sheet "
                + window.sheet() + ": " + window.wish()
                + report.camera(window.camera()).map(name -> ", " + name).orElse("")));
        return new Block.Evening(evening(night), cards);
    }

    private static String evening(PlanReport.PlannedNightRow night) {
        return night.times().dates() + ", " + night.site() + " (times in " + night.zone() + ")";
    }

    private static void addNight(Document document, PlanReport report, PlanReport.PlannedNightRow night) {
        document.heading(2, evening(night));
        document.text((night.darkness().isEmpty() ? "never dark" : "dark " + spans(night, night.darkness()))
                + (night.moonUp().isEmpty() ? "; Moon never up" : "; Moon up " + spans(night, night.moonUp()))
                + (night.forecast().isEmpty() ? "" : "; " + CloudRow.words(night.forecast())));
        if (!night.course().isEmpty()) {
            document.add(new Block.Figure("the night", made -> NightStrip.of(night, made),
                    StripWords.legend(night)));
        }
        document.add(windows(report, night));
        night.notes().forEach(document::item);
        if (!night.refused().isEmpty()) {
            Document refused = Document.part();
            night.refused().forEach(refusal -> refused.item(refusal.wish() + ": " + refusal.reason()));
            document.add(new Block.Aside("not on this night", refused));
        }
        night.windows().forEach(window -> document.add(SheetCard.of(report, night, window)));
    }

    private static void addIfClears(Document document, PlanReport report) {
        if (report.ifClears().isEmpty()) {
            return;
        }
        NightTimes times = report.nights().get(0).times();
        document.gap();
        document.heading(2, "If it clears only later");
        report.ifClears().forEach(later -> document.item("by " + times.about(later.clearAt().toInstant())
                + ": " + (later.windows().isEmpty() ? "nothing is left" : later.windows().stream()
                .map(window -> times.opens(window.openAt().toInstant()) + "–"
                + times.closes(window.closeAt().toInstant()) + " " + window.wish() + " at "
                + Wording.fNumber(window.fNumber())
                + report.camera(window.camera()).map(name -> " with " + name).orElse(""))
                .collect(Collectors.joining("; ")))));
    }

    /** The nights with nothing, those with the same reason together; so each wish. */
    private static void addNothing(Document document, PlanReport report) {
        Map<String, List<LocalDate>> nights = new LinkedHashMap<>();
        Map<String, List<LocalDate>> refused = new LinkedHashMap<>();
        for (PlanReport.PlannedNightRow night : report.nights()) {
            night.nothing().ifPresent(reason -> {
                nights.computeIfAbsent(reason, first -> new ArrayList<>()).add(night.night());
                night.refused().forEach(refusal -> refused.computeIfAbsent(refusal.wish() + ": "
                        + refusal.reason(), first -> new ArrayList<>()).add(night.night()));
            });
        }
        if (!nights.isEmpty()) {
            document.gap();
            document.heading(2, "Nights with nothing");
            addDated(document, nights);
            Document wishes = Document.part();
            addDated(wishes, refused);
            document.add(new Block.Aside("wish by wish", wishes));
        }
    }

    private static void addDated(Document document, Map<String, List<LocalDate>> dates) {
        dates.forEach((words, nights) -> document.item(NothingWords.dates(nights) + ": " + words));
    }

    /** Each wish that is not served as often as wanted, once, and what would use the sheets left over. */
    private static void addUnserved(Document document, PlanReport report) {
        boolean severalSites = report.nights().stream().map(PlanReport.PlannedNightRow::site).distinct()
                .count() > 1;
        if (!report.unserved().isEmpty()) {
            document.gap();
            document.heading(2, "Wishes not served");
            report.unserved().forEach(wish -> document.item(wish.words(severalSites)));
        }
        if (report.sheetsLeft() > 0) {
            document.gap();
            document.text(Wording.count(report.sheetsLeft(), "sheet") + " left over: " + wouldUse(report));
        }
    }

    private static String wouldUse(PlanReport report) {
        int wanted = report.unserved().stream().mapToInt(wish -> wish.wanted() - wish.served()).sum();
        int rest = report.sheetsLeft() - wanted;
        String others = "a repeat or another wish would use " + (report.sheetsLeft() == 1 ? "it" : "them");
        return wanted == 0 ? "every wish is served as often as wanted; " + others
                : report.unserved().stream().map(Unserved::wish).collect(Collectors.joining(" and "))
                + " would use " + (rest > 0 ? wanted + " of them" : report.sheetsLeft() == 1 ? "it" : "them")
                + ", see above" + (rest > 0 ? "; a repeat or another wish would use the rest" : "");
    }

    private static Table windows(PlanReport report, PlanReport.PlannedNightRow night) {
        Table table = new Table(Table.words("open"), Table.words("close"), Table.numbers("", "h:min")
                .leaving(3),
                Table.numbers("sheet"), Table.words("wish"), Table.numbers("f/"), Table.numbers("az", "°")
                .leaving(5), Table.numbers("alt", "°").leaving(4), Table.numbers("tone", "stops").leaving(6),
                Table.numbers("trail").leaving(2), Table.numbers("stars").leaving(1));
        for (PlanReport.WindowRow window : night.windows()) {
            table.row(night.times().opens(window.openAt().toInstant()),
                    night.times().closes(window.closeAt().toInstant()),
                    lasts(window.openAt(), window.closeAt()), String.valueOf(window.sheet()), window.wish(),
                    Wording.plain(window.fNumber()),
                    Wording.bearing(window.azimuthDeg()) + " " + Wording.number(window.azimuthDeg(), 0),
                    Wording.number(window.altitudeDeg(), 0),
                    Wording.tone(window.skyToneStops(), window.skyToneSpreadStops()),
                    TrailWords.of(window).cell(), String.valueOf(window.recordedStars()));
            table.note(report.camera(window.camera()).map(name -> name + ", ").orElse("")
                    + FilmWords.name(window.film(), window.fittedToSheets()) + ": " + window.reason()
                    + report.secondChoice(window.wish()).map(second -> "; " + second.words(report, window))
                    .orElse(""));
            SheetOpeningRow.times(window, night.times()).forEach(table::note);
        }
        return table;
    }

    private static String lasts(OffsetDateTime openAt, OffsetDateTime closeAt) {
        long minutes = Duration.between(openAt, closeAt).toMinutes();
        return String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60);
    }

    private static String spans(PlanReport.PlannedNightRow night, List<PlanReport.Span> spans) {
        return spans.stream().map(span -> night.times().span(span.from().toInstant(), span.to().toInstant()))
                .collect(Collectors.joining(", "));
    }
}
