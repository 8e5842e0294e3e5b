package gloam.view;

import gloam.journal.CurvePoint;
import gloam.view.JournalFitReport.UsedRow;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A fitted film drawn as corrected over metered time, both in the logarithm: its curve with the band that
 * holds nineteen in twenty, the published curve broken, no failure dotted, and every sheet as a bar.
 *
 * <p>A sheet's bar spans the times that would have made the mid-tone by what was said of it; an arrowhead
 * ends it where the word is open. A sheet that the others contradict is broken and has a question mark.
 */
final class JournalCurveDrawing {

    private static final double WIDTH = 180;
    private static final double HEIGHT = 146;
    private static final double LEFT = 20;
    private static final double RIGHT = 6;
    private static final double TOP = 22;
    private static final double BOTTOM = 39;
    private static final double NUMBER = 2.8;
    private static final int PLACES = 8;
    private static final double OPEN_END_STOPS = 2;
    private static final List<Tick> TICKS = List.of(new Tick(10, "10 s"), new Tick(60, "1 min"),
            new Tick(600, "10 min"),
            new Tick(3600, "1 h"), new Tick(36_000, "10 h"), new Tick(360_000, "100 h"));

    private final JournalFitReport report;
    private final double leastS;
    private final double mostMeteredS;
    private final double mostS;
    private final Drawing svg;
    private final LabelPlaces numbers;

    private static final Stroke FITTED = new Stroke("line", 0.7);
    private static final Stroke PUBLISHED = new Stroke("line broken", 0.4);
    private static final Stroke NO_FAILURE = new Stroke("line dotted", 0.4);

    /** How a curve is drawn: classes of the style sheet and its width in mm. */
    private record Stroke(String style, double width) {
    }

    private record Tick(double seconds, String name) {
    }

    private JournalCurveDrawing(JournalFitReport report) {
        this.report = report;
        CurvePoint last = report.curve().get(report.curve().size() - 1);
        this.leastS = report.curve().get(0).meteredS();
        this.mostMeteredS = last.meteredS();
        this.mostS = 1.5 * report.sheets().stream().mapToDouble(JournalCurveDrawing::slowestS)
                .reduce(last.mostS(), Math::max);
        this.svg = new Drawing(Drawing.Unit.MM, WIDTH, HEIGHT, 3, title(), description());
        this.numbers = new LabelPlaces(LEFT, TOP, WIDTH - RIGHT, HEIGHT - BOTTOM, NUMBER);
    }

    /** The drawing of a fit. */
    static String of(JournalFitReport report, String made) {
        return new JournalCurveDrawing(report).drawn(made);
    }

    private String drawn(String made) {
        svg.label(LEFT, 8, title(), "font-size", 4.6);
        svg.label(LEFT, 14, estimates());
        axes();
        curves();
        List<UsedRow> judged = report.sheets().stream().filter(sheet -> !sheet.tone().isEmpty())
                .sorted(Comparator.comparingDouble(UsedRow::meteredS)).toList();
        judged.forEach(this::bar);
        judged.forEach(this::number);
        legend();
        return svg.finished(LEFT, made);
    }

    private String title() {
        return "Film " + report.film() + ", fitted to " + Wording.count(report.used(), "sheet");
    }

    private String description() {
        return "Corrected over metered time. " + estimates() + " "
                + report.situations().stream()
                .map(light -> light.name() + ": " + Wording.exposure(light.fittedS())
                        + " where " + Wording.exposure(light.publishedS()) + " is published")
                        .collect(Collectors.joining("; ")) + ".";
    }

    private String estimates() {
        return FilmWords.slower(report.speedOffsetStops()) + " than rated; reciprocity exponent "
                + FilmWords.estimate(report.exponent()) + ".";
    }

    private void axes() {
        for (Tick tick : TICKS) {
            if (tick.seconds <= mostMeteredS) {
                line(tick.seconds, leastS, tick.seconds, mostS, "grid");
                svg.label(x(tick.seconds), HEIGHT - BOTTOM + 5, tick.name, "class", "middle");
            }
            if (tick.seconds > mostS) {
                continue;
            }
            line(leastS, tick.seconds, mostMeteredS, tick.seconds, "grid");
            svg.label(LEFT - 1.5, y(tick.seconds) + 1.2, tick.name, "class", "end");
        }
        svg.label((LEFT + WIDTH - RIGHT) / 2, HEIGHT - BOTTOM + 10,
                "metered time of the mid-tone: the dimmer the light, the longer", "class", "middle");
        svg.label(LEFT, TOP - 2, "time to give");
    }

    private void curves() {
        List<CurvePoint> curve = report.curve();
        String upper = points(curve, CurvePoint::mostS);
        String lower = Stream.iterate(curve.size() - 1, i -> i >= 0, i -> i - 1)
                .map(i -> point(curve.get(i).meteredS(), curve.get(i).leastS()))
                .collect(Collectors.joining(" "));
        svg.empty("polygon", "points", upper + " " + lower, "class", "band");
        polyline(CurvePoint::meteredS, NO_FAILURE);
        polyline(CurvePoint::publishedS, PUBLISHED);
        polyline(CurvePoint::fittedS, FITTED);
    }

    private void bar(UsedRow sheet) {
        double x = x(sheet.meteredS());
        double least = fastestS(sheet);
        double most = slowestS(sheet);
        line(sheet.meteredS(), least, sheet.meteredS(), most, contradicted(sheet) ? "bar doubted" : "bar");
        end(sheet.meteredS(), least, sheet.toneUpToStops().isEmpty() ? 1 : 0);
        end(sheet.meteredS(), most, sheet.toneAboveStops().isEmpty() ? -1 : 0);
        numbers.keepOut(x - 0.8, y(most), x + 0.8, y(least));
    }

    /** A sheet's number beside its bar where it covers no line, else over the bar. */
    private void number(UsedRow sheet) {
        double x = x(sheet.meteredS());
        double top = y(slowestS(sheet));
        double step = (y(fastestS(sheet)) - top) / PLACES;
        String number = sheet.id() + (contradicted(sheet) ? "?" : "");
        LabelPlaces.Place place = numbers.take(number, IntStream.rangeClosed(1, PLACES + 1)
                .mapToObj(i -> new double[] {x, top + i % (PLACES + 1) * step}).toList())
                .orElseGet(() -> new LabelPlaces.Place(x + 1, top - 1, false));
        svg.label(place.x(), place.y(), number, "font-size", NUMBER, "class",
                place.end() ? "entry end" : "entry");
    }

    private boolean contradicted(UsedRow sheet) {
        return report.contradicted().stream().anyMatch(note -> note.id().equals(sheet.id()));
    }

    private static double fastestS(UsedRow sheet) {
        return sheet.openS() * Math.pow(2, -sheet.toneUpToStops().orElse(openEnd(sheet, 1)));
    }

    private static double slowestS(UsedRow sheet) {
        return sheet.openS() * Math.pow(2, -sheet.toneAboveStops().orElse(openEnd(sheet, -1)));
    }

    private static double openEnd(UsedRow sheet, int side) {
        return (side > 0 ? sheet.toneAboveStops() : sheet.toneUpToStops()).orElse(0) + side * OPEN_END_STOPS;
    }

    /** A bar's end: a stroke across, or an arrowhead up (-1) or down (1). */
    private void end(double meteredS, double timeS, int arrow) {
        double x = x(meteredS);
        double y = y(timeS);
        svg.empty("path", "d", "M " + Markup.number(x - 0.8) + " " + Markup.number(y - arrow * 1.4) + " L "
                + Markup.number(x) + " " + Markup.number(y) + " L " + Markup.number(x + 0.8) + " "
                + Markup.number(y - arrow * 1.4), "class", "bar");
    }

    private void legend() {
        List<Stroke> strokes = List.of(FITTED, PUBLISHED, NO_FAILURE);
        List<String> names = List.of("fitted; grey holds nineteen in twenty", "published", "no failure");
        double[] starts = {LEFT, LEFT + 72, LEFT + 102};
        double y = HEIGHT - BOTTOM + 17;
        for (int i = 0; i < starts.length; i++) {
            svg.empty("path", "d", "M " + Markup.number(starts[i]) + " " + Markup.number(y - 1) + " h 9",
                    "class", strokes.get(i).style, "stroke-width", strokes.get(i).width);
            svg.label(starts[i] + 10.5, y, names.get(i));
        }
        svg.label(LEFT, y + 6,
                "Bars, with the entry's number: the times that would have made the mid-tone, by the tone "
                + "the sheet got;");
        svg.label(LEFT, y + 11,
                "an arrowhead where that tone is open to one side, broken and with ? where the other sheets "
                + "contradict.");
    }

    private void polyline(ToDoubleFunction<CurvePoint> timeS, Stroke stroke) {
        List<CurvePoint> curve = report.curve();
        svg.empty("polyline", "points", points(curve, timeS), "class", stroke.style, "stroke-width",
                stroke.width);
        for (int i = 0; i + 1 < curve.size(); i++) {
            numbers.keepOff(x(curve.get(i).meteredS()), y(timeS.applyAsDouble(curve.get(i))),
                    x(curve.get(i + 1).meteredS()), y(timeS.applyAsDouble(curve.get(i + 1))));
        }
    }

    private void line(double x1S, double y1S, double x2S, double y2S, String style) {
        svg.empty("path", "d", "M " + point(x1S, y1S).replace(',', ' ') + " L " + point(x2S, y2S)
                .replace(',', ' '), "class", style);
    }

    private String points(List<CurvePoint> curve, ToDoubleFunction<CurvePoint> timeS) {
        return curve.stream().map(row -> point(row.meteredS(), timeS.applyAsDouble(row)))
                .collect(Collectors.joining(" "));
    }

    private String point(double meteredS, double timeS) {
        return Markup.number(x(meteredS)) + "," + Markup.number(y(timeS));
    }

    private double x(double meteredS) {
        double share = Math.log(Math.max(leastS, Math.min(mostMeteredS, meteredS)) / leastS)
                / Math.log(mostMeteredS / leastS);
        return LEFT + share * (WIDTH - LEFT - RIGHT);
    }

    private double y(double timeS) {
        double share = Math.log(Math.max(leastS, Math.min(mostS, timeS)) / leastS) / Math.log(mostS / leastS);
        return HEIGHT - BOTTOM - share * (HEIGHT - BOTTOM - TOP);
    }
}
