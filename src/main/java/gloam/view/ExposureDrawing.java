package gloam.view;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * The times of an exposure at every f-number, on an axis in equal ratios: each with its ±, and beside it the
 * time that a meter would give, so that what the film loses is seen.
 */
final class ExposureDrawing {

    private static final double WIDTH = 180;
    private static final double LEFT = 22;
    private static final double RIGHT = 42;
    private static final double TOP = 22;
    private static final double ROW = 9;
    private static final double FOOT = 30;
    private static final double LETTER = 3.4;
    private static final double LEAST_RATIO = 4;
    private static final double MARK = 1.1;
    private static final double APART = 14;

    private final ExposureReport report;
    private final List<ExposureRow> rows;
    private final TimeAxis axis;
    private final Drawing svg;

    private ExposureDrawing(ExposureReport report) {
        this.report = report;
        this.rows = timed(report);
        double leastS = times().min().orElse(1) / 1.2;
        this.axis = new TimeAxis(leastS, Math.max(LEAST_RATIO * leastS, times().max().orElse(1) * 1.2), LEFT,
                WIDTH - LEFT - RIGHT);
        this.svg = new Drawing(Drawing.Unit.MM, WIDTH, TOP + ROW * rows.size() + FOOT, LETTER, title(),
                "For each f-number the time to expose with its spread, and the metered time.");
    }

    /** Whether any time was asked for and ends, so that there is something to draw. */
    static boolean suits(ExposureReport report) {
        return !timed(report).isEmpty();
    }

    /** The drawing of an exposure's times. */
    static String of(ExposureReport report, String made) {
        return new ExposureDrawing(report).drawn(made);
    }

    private String title() {
        Situation situation = report.situation();
        return "Times at every f-number: " + FilmWords.name(situation.film(), situation.fittedToSheets());
    }

    private String drawn(String made) {
        Situation situation = report.situation();
        svg.label(LEFT, 7, title(), "font-size", 4.6);
        svg.label(LEFT, 12.5, situation.source() + ", " + Wording.number(situation.skyMagArcsec2(), 2)
                + " mag/arcsec\u00b2");
        svg.label(LEFT, 17.5, situation.openAt().map(at -> "opened " + Wording.date(Wording.secondDate(at))
                + " " + Wording.second(at) + " (" + Wording.offset(at) + ")").orElse("")
                + situation.site().map(site -> " at " + site.name()).orElse(""));
        axis();
        for (int i = 0; i < rows.size(); i++) {
            row(rows.get(i), TOP + ROW * (i + 0.5));
        }
        double foot = TOP + ROW * rows.size();
        svg.label((LEFT + WIDTH - RIGHT) / 2, foot + 10, "time, each step of the axis in equal ratios",
                "class", "middle");
        svg.empty("circle", "cx", LEFT + 1, "cy", foot + 16, "r", MARK, "class", "entry");
        svg.label(LEFT + 4, foot + 17.2, "expose, and its \u00b1 of one standard deviation");
        svg.empty("circle", "cx", LEFT + 85, "cy", foot + 16, "r", MARK, "class", "line", "stroke-width",
                0.3);
        svg.label(LEFT + 88, foot + 17.2, "metered: without reciprocity failure");
        return svg.finished(LEFT, made);
    }

    private void axis() {
        for (double tick : axis.ticks(APART)) {
            svg.empty("path", "d", "M" + Markup.number(axis.x(tick)) + " " + TOP + "v"
                    + Markup.number(ROW * rows.size() + 1.5), "class", "grid");
            svg.label(axis.x(tick), TOP + ROW * rows.size() + 5, Wording.exposure(tick), "class", "middle");
        }
    }

    private void row(ExposureRow row, double y) {
        double time = row.correctedS().getAsDouble();
        svg.label(LEFT - 3, y + 1.2, Wording.fNumber(row.fNumber()), "class", "end");
        svg.empty("rect", "x", axis.x(low(row)), "y", y - 1.6, "width", axis.x(high(row)) - axis.x(low(row)),
                "height", 3.2, "class", "band");
        row.meteredS().stream().filter(metered -> metered > 0)
                .forEach(metered -> svg.empty("circle", "cx", axis.x(metered), "cy", y, "r", MARK, "class",
                "line", "stroke-width", 0.3));
        svg.empty("circle", "cx", axis.x(time), "cy", y, "r", MARK, "class", "entry");
        svg.label(WIDTH - RIGHT + 3, y + 1.2, Wording.exposure(time) + row.closeAt()
                .map(at -> ", to " + Wording.minute(at)).orElse(""));
    }

    private static List<ExposureRow> timed(ExposureReport report) {
        return report.situation().lastsS().isPresent() ? List.of() : report.exposures().stream()
                .filter(row -> row.correctedS().orElse(0) > 0).toList();
    }

    private DoubleStream times() {
        return rows.stream().flatMapToDouble(row -> DoubleStream.of(row.meteredS().orElse(1),
                low(row), row.correctedS().getAsDouble(), high(row))).filter(time -> time > 0);
    }

    private static double low(ExposureRow row) {
        return row.correctedLowS().orElse(row.correctedS().getAsDouble());
    }

    private static double high(ExposureRow row) {
        return row.correctedHighS().orElse(row.correctedS().getAsDouble());
    }
}
