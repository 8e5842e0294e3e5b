package gloam.view;

import gloam.answer.ToneCourse;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The tone of a sheet against the time at which it is closed, at one f-number: the curve with its ±, the tone
 * wanted with the times to give at least, at best and at most, and what the sky does until then.
 */
final class ToneCourseDrawing {

    private static final double WIDTH = 196;
    private static final double LEFT = 16;
    private static final double PLOT = 160;
    private static final double TOP = 24;
    private static final double HEIGHT = 90;
    private static final double FOOT = 42;
    private static final double LETTER = 3.4;
    private static final double FINE = 2.9;
    private static final int MOST_STOPS = 8;
    private static final int MOST_HOURS = 8;

    private final ExposureReport report;
    private final Situation situation;
    private final ExposureRow row;
    private final List<ToneCourse.ClosedTone> points;
    private final OffsetDateTime from;
    private final double lastsS;
    private final int lowest;
    private final int highest;
    private final Drawing svg;
    private final LabelPlaces places;

    private ToneCourseDrawing(ExposureReport report, ToneCourse course) {
        this.report = report;
        this.situation = report.situation();
        this.row = report.exposures().get(0);
        this.points = course.points();
        this.from = situation.openAt().orElseThrow();
        this.lastsS = Duration.between(from.toInstant(), points.get(points.size() - 1).closeAt()).toSeconds();
        double wanted = situation.toneStops().orElse(0);
        double most = points.stream().mapToDouble(at -> at.toneStops() + at.spreadStops()).max().orElse(0);
        double least = points.stream().mapToDouble(at -> at.toneStops() - at.spreadStops()).min().orElse(0);
        this.highest = (int) Math.ceil(Math.max(most, Math.min(wanted, most + MOST_STOPS / 2.0) + 1));
        this.lowest = (int) Math.floor(Math.max(highest - MOST_STOPS, Math.min(least, wanted - 2)));
        this.svg = new Drawing(Drawing.Unit.MM, WIDTH, TOP + HEIGHT + FOOT, LETTER, title(),
                "The tone with its spread against the time at which the shutter is closed.");
        this.places = new LabelPlaces(LEFT, TOP + HEIGHT, LEFT + PLOT + 12, TOP + HEIGHT + 24, FINE);
    }

    /** The drawing of a course. */
    static String of(ExposureReport report, ToneCourse course, String made) {
        return new ToneCourseDrawing(report, course).drawn(made);
    }

    private String title() {
        return "Tone against time: " + FilmWords.name(situation.film(), situation.fittedToSheets()) + " at "
                + Wording.fNumber(row.fNumber()) + ", azimuth "
                + Wording.plain(situation.azimuthDeg().orElse(0)) + "°, altitude "
                + Wording.plain(situation.altitudeDeg().orElse(0)) + "°";
    }

    private String drawn(String made) {
        svg.label(LEFT, 8, title(), "font-size", 4.6);
        svg.label(LEFT, 13.5, situation.site().map(site -> site.name() + ", ").orElse("") + "opened "
                + Wording.date(Wording.secondDate(from)) + " " + Wording.second(from) + situation.site()
                .map(site -> " (" + site.zone() + ")").orElse(""));
        svg.label(LEFT, TOP - 3, "stops from the mid-tone", "font-size", FINE);
        axes();
        svg.openPane("tone-pane", LEFT, TOP, PLOT, HEIGHT, LEFT, TOP, "course");
        String upper = line(at -> at.toneStops() + at.spreadStops());
        List<ToneCourse.ClosedTone> back = new ArrayList<>(points);
        Collections.reverse(back);
        String lower = back.stream().map(at -> point(at, at.toneStops() - at.spreadStops()))
                .collect(Collectors.joining(" "));
        svg.empty("polygon", "points", upper + " " + lower, "class", "band");
        svg.empty("polyline", "points", line(ToneCourse.ClosedTone::toneStops), "class", "line",
                "stroke-width", 0.7);
        svg.closePane();
        marks();
        events();
        foot();
        return svg.finished(LEFT, made);
    }

    private void axes() {
        for (int stops = lowest; stops <= highest; stops++) {
            svg.empty("path", "d", "M" + LEFT + " " + Markup.number(y(stops)) + "h" + PLOT, "class",
                    stops == 0 ? "line" : "grid", "stroke-width", 0.2);
            svg.label(LEFT - 2, y(stops) + 1.2, Wording.signed(stops, 0), "class", "end");
        }
        if (lowest <= 0 && highest >= 0) {
            svg.label(LEFT + PLOT + 1.5, y(0) + 1.2, "mid-tone", "font-size", FINE);
        }
        int stepMin = (int) (lastsS / 3600) >= 2 ? 60 * (int) Math.ceil(lastsS / 3600 / MOST_HOURS)
                : lastsS > 2400 ? 15 : lastsS > 600 ? 5 : 1;
        ZonedDateTime at = from.toZonedDateTime().truncatedTo(ChronoUnit.HOURS);
        for (; Duration.between(from, at).toSeconds() <= lastsS; at = at.plusMinutes(stepMin)) {
            if (!at.toOffsetDateTime().isBefore(from)) {
                svg.empty("path", "d", "M" + Markup.number(x(at.toOffsetDateTime())) + " " + TOP + "v"
                        + Markup.number(HEIGHT + 1.5), "class", "grid");
                svg.label(x(at.toOffsetDateTime()), TOP + HEIGHT + 5, Wording.minute(at.toOffsetDateTime()),
                        "class", "middle", "font-size", FINE);
            }
        }
    }

    /** The times for the tone wanted, or the tone of the time. */
    private void marks() {
        if (situation.lastsS().isPresent()) {
            mark(situation.lastsS(), row.skyToneStops(), true);
            return;
        }
        mark(row.correctedLowS(), situation.toneStops().orElse(0), false);
        mark(row.correctedHighS(), situation.toneStops().orElse(0), false);
        mark(row.correctedS(), situation.toneStops().orElse(0), true);
    }

    private void mark(OptionalDouble seconds, double toneStops, boolean best) {
        seconds.stream().filter(lasts -> lasts <= lastsS && toneStops >= lowest && toneStops <= highest)
                .forEach(lasts -> {
            double x = LEFT + PLOT * lasts / lastsS;
            svg.empty("path", "d", "M" + Markup.number(x) + " " + Markup.number(y(toneStops)) + "V"
                    + Markup.number(TOP + HEIGHT), "class", best ? "stay" : "stay broken", "stroke-width",
                    0.4);
            svg.empty("circle", "cx", x, "cy", y(toneStops), "r", best ? 1.3 : 0.9, "class", "entry");
        });
    }

    /** What changes the light, below the axis. */
    private void events() {
        situation.events().forEach(event -> {
            double x = x(event.at());
            svg.empty("path", "d", "M" + Markup.number(x) + " " + TOP + "v" + HEIGHT, "class", "line dotted",
                    "stroke-width", 0.4);
            String words = event.what().replace('-', ' ') + " " + Wording.minute(event.at());
            places.take(words, IntStream.range(0, 3).mapToObj(line -> new double[] {x - 1.5,
                TOP + HEIGHT + 11.5 + 4.2 * line}).toList())
                .ifPresent(place -> svg.label(place.x(), place.y(),
                    words, "font-size", FINE, "class", place.end() ? "end" : "start"));
        });
    }

    private void foot() {
        double y = TOP + HEIGHT + 28;
        List<String> times = new ArrayList<>();
        add(times, "at least ", row.correctedLowS());
        add(times, "best ", row.correctedS());
        add(times, "at most ", row.correctedHighS());
        svg.label(LEFT, y, situation.lastsS().isPresent() ? "Dot: " + Wording.tone(row.skyToneStops(),
                row.skyToneSpreadStops()) + " after " + Wording.lasting(situation.lastsS().getAsDouble())
                : times.isEmpty() ? "The tone wanted is never reached"
                : "Tone " + Wording.signed(situation.toneStops().orElse(0), 1) + ": "
                + String.join(", ", times));
        svg.label(LEFT, y + 5, "Band: ± of one standard deviation, in which the tone lies two times in "
                + "three; across: when the shutter is closed.", "font-size", FINE);
    }

    private static void add(List<String> times, String name, OptionalDouble seconds) {
        seconds.stream().filter(Double::isFinite).forEach(lasts -> times.add(name + Wording.exposure(lasts)));
    }

    private String line(ToDoubleFunction<ToneCourse.ClosedTone> stops) {
        return points.stream().map(at -> point(at, stops.applyAsDouble(at))).collect(Collectors.joining(" "));
    }

    private String point(ToneCourse.ClosedTone at, double stops) {
        return Markup.number(LEFT + PLOT * Duration.between(from.toInstant(), at.closeAt()).toMillis() / 1e3
                / lastsS) + "," + Markup.number(y(stops));
    }

    private double x(OffsetDateTime at) {
        return LEFT + PLOT * Math.max(0, Math.min(1, Duration.between(from, at).toSeconds() / lastsS));
    }

    private double y(double stops) {
        return TOP + HEIGHT * (highest - stops) / (highest - lowest);
    }
}
