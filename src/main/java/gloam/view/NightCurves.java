package gloam.view;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * A night at one site from before sunset to after sunrise: how high Sun, Moon and planets stand, how dark the
 * zenith is, and the events of Sun and Moon.
 */
final class NightCurves {

    private static final double WIDTH = 190;
    private static final double LEFT = 16;
    private static final double PLOT = 158;
    private static final double TOP = 24;
    private static final double HEIGHT = 84;
    private static final double FOOT = 57;
    private static final double LETTER = 3.4;
    private static final double FINE = 2.9;
    private static final double LOWEST_DEG = -20;
    private static final double DARKEST_MAG = 22;
    private static final double BRIGHTEST_MAG = 4;
    private static final int EVENT_LINES = 5;
    private static final double PLANET = 0.4;

    private final NightReport report;
    private final List<NightReport.HourRow> hours;
    private final OffsetDateTime from;
    private final double lastsS;
    private final Drawing svg;
    private final LabelPlaces names;
    private final Map<String, List<double[]>> curves = new LinkedHashMap<>();
    private final LabelPlaces events;

    private NightCurves(NightReport report) {
        this.report = report;
        this.hours = report.hours();
        this.from = hours.get(0).at();
        this.lastsS = Duration.between(from, hours.get(hours.size() - 1).at()).toSeconds();
        this.svg = new Drawing(Drawing.Unit.MM, WIDTH, TOP + HEIGHT + FOOT, LETTER, title(),
                "How high Sun, Moon and planets stand by the hour, and how dark the zenith is.");
        this.names = new LabelPlaces(LEFT, TOP, LEFT + PLOT, TOP + HEIGHT, FINE);
        this.events = new LabelPlaces(LEFT, TOP + HEIGHT, LEFT + PLOT + 14, TOP + HEIGHT + 34, FINE);
    }

    /** Whether the Sun sets, so that there is a night to draw. */
    static boolean suits(NightReport report) {
        return report.hours().size() > 2;
    }

    /** The drawing of a night. */
    static String of(NightReport report, String made) {
        return new NightCurves(report).drawn(made);
    }

    private String title() {
        return "Night of " + Wording.date(report.nights().get(0).night()) + ", " + report.site().name() + " ("
                + report.site().zone() + ")";
    }

    private String drawn(String made) {
        svg.label(LEFT, 8, title(), "font-size", 4.6);
        svg.label(LEFT, 13.5, report.nights().get(0).darkness());
        svg.label(LEFT - 12, TOP - 3, "altitude", "font-size", FINE);
        svg.label(WIDTH - 2, TOP - 3, "zenith, mag/arcsec²", "font-size", FINE, "class", "end");
        axes();
        curve(hour -> sky(hour.zenithMagArcsec2()), "stay broken", 0.5, "zenith", false);
        curve(NightReport.HourRow::sunAltitudeDeg, "line dotted", 0.6, "Sun", true);
        for (int planet = 0; planet < NightReport.PLANETS_SHOWN; planet++) {
            int number = planet;
            String name = report.planets().get(planet).name();
            curve(hour -> hour.planets().get(number).apparentAltitudeDeg(), "planet " + name, PLANET,
                    Wording.title(name), true);
        }
        curve(NightReport.HourRow::moonAltitudeDeg, "line", 0.9, "Moon", true);
        List<NightRow.EventRow> happenings = happenings();
        curves.forEach((name, points) -> names.take(name, points).ifPresent(place ->
                svg.label(place.x(), place.y(), name, "font-size", FINE, "class",
                        place.end() ? "name slanted end" : "name slanted", "stroke-width", 0.5)));
        name(happenings);
        foot();
        return svg.finished(LEFT, made);
    }

    private void axes() {
        for (int deg = 0; deg <= 90; deg += 30) {
            svg.empty("path", "d", "M" + LEFT + " " + Markup.number(y(deg)) + "h" + PLOT, "class",
                    deg == 0 ? "line" : "grid", "stroke-width", 0.2);
            svg.label(LEFT - 2, y(deg) + 1.2, deg + "°", "class", "end");
        }
        for (double mag = DARKEST_MAG; mag >= BRIGHTEST_MAG; mag -= 6) {
            svg.label(LEFT + PLOT + 2, y(sky(mag)) + 1.2, Wording.plain(mag));
        }
        int step = Math.max(1, hours.size() / 12);
        for (int i = 0; i < hours.size(); i += step) {
            svg.empty("path", "d", "M" + Markup.number(x(hours.get(i).at())) + " " + TOP + "v"
                    + Markup.number(HEIGHT + 1.5), "class", "grid");
            svg.label(x(hours.get(i).at()), TOP + HEIGHT + 5, Wording.minute(hours.get(i).at()), "class",
                    "middle", "font-size", FINE);
        }
    }

    /** How high the zenith's brightness is drawn: the darker the lower. */
    private static double sky(double mag) {
        return 90 * (DARKEST_MAG - mag) / (DARKEST_MAG - BRIGHTEST_MAG);
    }

    /** Lines through the hours, as far as they are in the drawing. */
    private void curve(ToDoubleFunction<NightReport.HourRow> height, String style, double stroke,
            String name,
            boolean bent) {
        List<double[]> all = new ArrayList<>();
        List<double[]> run = new ArrayList<>();
        for (NightReport.HourRow hour : hours) {
            double deg = height.applyAsDouble(hour);
            if (deg >= LOWEST_DEG && deg <= 90) {
                run.add(new double[] {x(hour.at()), y(deg)});
            } else {
                line(run, style, stroke, bent);
                all.addAll(run);
                run.clear();
            }
        }
        line(run, style, stroke, bent);
        all.addAll(run);
        curves.put(name, all);
    }

    /** A line through some points, straight between them or bent without a corner. */
    private void line(List<double[]> points, String style, double stroke, boolean bent) {
        if (points.size() < 2) {
            return;
        }
        StringBuilder path = new StringBuilder("M" + at(points.get(0)));
        for (int i = 0; i + 1 < points.size(); i++) {
            double[] from = points.get(i);
            double[] to = points.get(i + 1);
            path.append(bent ? "C" + at(bend(from, points.get(Math.max(0, i - 1)), to)) + " "
                    + at(bend(to, points.get(Math.min(points.size() - 1, i + 2)), from)) + " " : "L")
                    .append(at(to));
            names.keepOff(from[0], from[1], to[0], to[1]);
        }
        svg.empty("path", "d", path, "class", style, "stroke-width", stroke);
        points.forEach(point -> svg.empty("circle", "cx", point[0], "cy", point[1], "r", 0.3 + stroke / 2,
                "class", bent ? "ink" : "entry"));
    }

    /** A sixth of the way that its neighbours lie apart beside a point. */
    private static double[] bend(double[] point, double[] behind, double[] ahead) {
        return new double[] {point[0] + (ahead[0] - behind[0]) / 6, point[1] + (ahead[1] - behind[1]) / 6};
    }

    private static String at(double[] point) {
        return Markup.number(point[0]) + " " + Markup.number(point[1]);
    }

    /** Marks the events of Sun and Moon on the axis. */
    private List<NightRow.EventRow> happenings() {
        List<NightRow.EventRow> all = report.nights().get(0).events().stream()
                .filter(event -> ofSunAndMoon(event.what())).filter(event -> !event.at().isBefore(from)
                && Duration.between(from, event.at()).toSeconds() <= lastsS).toList();
        double foot = TOP + HEIGHT;
        all.forEach(event -> {
            double x = x(event.at());
            svg.empty("path", "d", "M" + at(new double[] {x, foot}) + "v-3", "class", "line",
                    "stroke-width", 0.4);
            names.keepOff(x, foot - 3, x, foot);
        });
        return all;
    }

    /**
     * Names events below the axis where they cover nothing. Names run from the edges inwards, so that those
     * nearest to the middle come first and no line to a name runs through another one.
     */
    private void name(List<NightRow.EventRow> happenings) {
        double middle = LEFT + PLOT / 2;
        happenings.stream().sorted(Comparator.comparingDouble(event -> Math.abs(x(event.at()) - middle)))
                .forEach(event -> {
            double x = x(event.at());
            String words = NightReport.words(event.what()) + " " + Wording.minute(event.at());
            List<double[]> lines = IntStream.range(0, EVENT_LINES).mapToObj(line -> new double[] {x - 1.5,
                TOP + HEIGHT + 11 + 4.2 * line}).toList();
            events.takeInwards(words, lines).or(() -> events.take(words, lines)).ifPresent(place -> {
                    svg.empty("path", "d", "M" + at(new double[] {x, TOP + HEIGHT + 6}) + "V"
                            + Markup.number(place.y() + 0.5), "class", "grid");
                    events.keepOff(x, TOP + HEIGHT + 6, x, place.y());
                    svg.label(place.x(), place.y(), words, "font-size", FINE, "class",
                            place.end() ? "end" : "start");
                });
        });
    }

    private static boolean ofSunAndMoon(String what) {
        return !what.endsWith("skyline") || what.startsWith("sun") || what.startsWith("moon");
    }

    /** The planets' strokes, then what else is drawn how. */
    private void foot() {
        double y = TOP + HEIGHT + 38;
        double x = LEFT;
        for (NightReport.PlanetRow planet : report.planets().subList(0, NightReport.PLANETS_SHOWN)) {
            String name = planet.name();
            svg.empty("path", "d", "M" + at(new double[] {x, y - 1}) + "h14", "class", "planet " + name,
                    "stroke-width", PLANET);
            svg.label(x + 15.5, y, Wording.title(name), "font-size", FINE);
            x += 34;
        }
        svg.label(LEFT, y + 5, "Bold: the Moon; thin: planets; dotted: the Sun; broken, straight: the "
                + "zenith's brightness, on the right.", "font-size", FINE);
        svg.label(LEFT, y + 10, "Dots: each full hour by the site's clocks. Altitudes in degrees over a "
                + "level horizon, with refraction.", "font-size", FINE);
    }

    private double x(OffsetDateTime at) {
        return LEFT + PLOT * Duration.between(from, at).toSeconds() / lastsS;
    }

    private double y(double deg) {
        return TOP + HEIGHT * (90 - deg) / (90 - LOWEST_DEG);
    }
}
