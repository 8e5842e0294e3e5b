package gloam.view;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The nights of a timetable, each on one sheet from sunset to sunrise: how bright the zenith is, as a grey
 * and a curve; how high the Moon and aims stand; twilights; the forecast's cloud; windows and their slack.
 */
final class NightStrip {

    private static final double WIDTH = 640;
    private static final double LEFT = 40;
    private static final double PLOT = WIDTH - 2 * LEFT;
    private static final double LETTER = 12;
    /** The same as the page's style sheet has it on telephones. */
    private static final double LETTER_ON_PHONES = 20;
    private static final double SKY_TOP = 48;
    private static final double SKY_HEIGHT = 120;
    private static final double CLOUD_DEPTH = 20;
    private static final double BAR_TOP = SKY_TOP + SKY_HEIGHT + 8;
    private static final double BAR_HEIGHT = 22;
    private static final double HOURS_TOP = BAR_TOP + BAR_HEIGHT + 16;
    private static final double WORDS_TOP = HOURS_TOP + 32;
    private static final double LINE = 16;

    private final Markup svg = new Markup();
    private final PlanReport.PlannedNightRow night;
    private final double top;
    private final OffsetDateTime from;
    private final double lastsS;

    private NightStrip(PlanReport.PlannedNightRow night, double top) {
        this.night = night;
        this.top = top;
        this.from = night.course().get(0).at();
        this.lastsS = Math.max(1, Duration.between(from,
                night.course().get(night.course().size() - 1).at()).toSeconds());
    }

    /** All nights that have one, one below the other. */
    static String of(PlanReport plan, String made) {
        return drawn(plan.title(), plan.nights().stream().filter(night -> !night.course().isEmpty()).toList(),
                true, made);
    }

    /** One night without its words, which a page sets beneath; empty where the Sun does not set. */
    static String of(PlanReport.PlannedNightRow night, String made) {
        return night.course().isEmpty() ? "" : drawn(title(night), List.of(night), false, made);
    }

    private static String drawn(String title, List<PlanReport.PlannedNightRow> nights, boolean full,
            String made) {
        Markup strips = new Markup();
        double top = 0;
        for (PlanReport.PlannedNightRow night : nights) {
            List<String> words = full ? StripWords.of(night) : List.of();
            strips.add(new NightStrip(night, top).strip(words));
            top += WORDS_TOP + LINE * words.size();
        }
        Drawing all = new Drawing(Drawing.Unit.PX, WIDTH, top + LINE, LETTER, title,
                "Brightness of the sky, height of the Moon and of what each sheet aims at, and the windows.");
        all.add(strips.toString());
        return all.finished(LEFT, made);
    }

    private static String title(PlanReport.PlannedNightRow night) {
        return night.times().dates() + ", " + night.site();
    }

    private String strip(List<String> words) {
        svg.label(LEFT, top + 16, title(night) + " (" + night.zone() + ")");
        sky();
        axes();
        twilights();
        moon();
        cloud();
        curve(night.course().stream().map(sky -> at(sky, y(90 * SkyGrey.light(sky.zenithMagArcsec2())))),
                "curve");
        aims();
        windows();
        hours();
        for (int line = 0; line < words.size(); line++) {
            svg.label(LEFT, top + WORDS_TOP - LINE / 2 + line * LINE, words.get(line), "class", "fine");
        }
        return svg.toString();
    }

    private double x(OffsetDateTime at) {
        return LEFT + PLOT * Math.max(0, Math.min(1, Duration.between(from, at).toSeconds() / lastsS));
    }

    private double y(double heightDeg) {
        return top + SKY_TOP + SKY_HEIGHT * (1 - heightDeg / 90);
    }

    /** The zenith's brightness as grey, a strip for each sample. */
    private void sky() {
        svg.open("g", "class", "sky");
        List<PlanReport.SkyRow> course = night.course();
        for (int i = 0; i + 1 < course.size(); i++) {
            double left = x(course.get(i).at());
            double light = SkyGrey.light(course.get(i).zenithMagArcsec2());
            svg.empty("rect", "x", left, "y", top + SKY_TOP, "width", x(course.get(i + 1).at()) - left + 0.5,
                    "height", SKY_HEIGHT, "fill", SkyGrey.colour(light), "style",
                    "--light:" + Markup.number(light));
        }
        svg.close("g");
    }

    /** Heights on the left, brightness of the sky on the right. */
    private void axes() {
        for (int heightDeg = 0; heightDeg <= 90; heightDeg += 30) {
            svg.label(LEFT - 6, y(heightDeg) + 4, heightDeg + "°", "class", "end fine");
        }
        for (double mag = SkyGrey.DARKEST_MAG; mag >= SkyGrey.BRIGHTEST_MAG; mag -= 4) {
            svg.label(LEFT + PLOT + 6, y(90 * SkyGrey.light(mag)) + 4, Wording.plain(mag), "class", "fine");
        }
        svg.label(WIDTH - 4, top + SKY_TOP - 20, "mag/arcsec²", "class", "end fine");
    }

    /** Where the Sun passes the depths that end twilights, between the samples beside them. */
    private void twilights() {
        List<PlanReport.SkyRow> course = night.course();
        for (int i = 0; i + 1 < course.size(); i++) {
            double before = course.get(i).sunAirlessAltitudeDeg();
            double after = course.get(i + 1).sunAirlessAltitudeDeg();
            double left = x(course.get(i).at());
            double right = x(course.get(i + 1).at());
            for (int depthDeg = -6; depthDeg >= -18; depthDeg -= 6) {
                if (before > depthDeg != after > depthDeg) {
                    double x = left + (right - left) * (depthDeg - before) / (after - before);
                    svg.empty("path", "d", "M" + Markup.number(x) + " " + Markup.number(top + SKY_TOP - 4)
                            + "v4", "class", "line");
                    svg.label(x, top + SKY_TOP - 7, "" + -depthDeg, "font-size", 10, "class", "fine"
                            + (depthDeg == -12 ? " middle" : before > after == depthDeg > -12 ? " end" : ""));
                }
            }
        }
    }

    /** The Moon's heights, a curve for each time that it is up. */
    private void moon() {
        List<String> up = new ArrayList<>();
        for (PlanReport.SkyRow sky : night.course()) {
            if (sky.moonAltitudeDeg() >= 0) {
                up.add(at(sky, y(sky.moonAltitudeDeg())));
            } else {
                curve(up.stream(), "moon");
                up.clear();
            }
        }
        curve(up.stream(), "moon");
    }

    private String at(PlanReport.SkyRow sky, double y) {
        return Markup.number(x(sky.at())) + "," + Markup.number(y);
    }

    private void curve(Stream<String> points, String style) {
        String all = points.collect(Collectors.joining(" "));
        if (!all.isEmpty()) {
            svg.empty("polyline", "points", all, "class", style);
        }
    }

    /** What each sheet aims at, at its height while the shutter is open; near the zenith its number below. */
    private void aims() {
        for (PlanReport.WindowRow window : night.windows()) {
            double left = x(window.openAt());
            double right = Math.max(left + 3, x(window.closeAt()));
            double y = y(window.altitudeDeg());
            svg.empty("path", "d", "M" + Markup.number(left) + " " + Markup.number(y) + "H"
                    + Markup.number(right), "class", "aim");
            svg.label((left + right) / 2, y - 4 - LETTER > top + SKY_TOP ? y - 4 : y + LETTER + 2,
                    "" + window.sheet(), "class", "aim middle");
        }
    }

    /** The forecast's cloud, which hangs down from the sky's upper edge: by its full depth where overcast. */
    private void cloud() {
        List<CloudRow> forecast = night.forecast();
        if (forecast.isEmpty()) {
            return;
        }
        String edge = Markup.number(top + SKY_TOP);
        StringBuilder points = new StringBuilder(Markup.number(x(forecast.get(0).at())) + "," + edge);
        forecast.forEach(row -> points.append(' ' + Markup.number(x(row.at())) + ","
                + Markup.number(top + SKY_TOP + CLOUD_DEPTH * row.cloudFraction())));
        points.append(' ' + Markup.number(x(forecast.get(forecast.size() - 1).at())) + "," + edge);
        svg.open("g").words("title", CloudRow.words(forecast))
                .empty("polygon", "points", points, "class", "cloud").close("g");
    }

    private void windows() {
        List<String> cameras = night.windows().stream().map(PlanReport.WindowRow::camera).distinct().toList();
        double high = BAR_HEIGHT / cameras.size();
        for (PlanReport.WindowRow window : night.windows()) {
            double over = top + BAR_TOP + high * cameras.indexOf(window.camera());
            double left = x(window.openAt());
            double width = Math.max(3, x(window.closeAt()) - left);
            svg.open("g").words("title", window.wish() + ", " + night.times().exposure(
                    window.openAt().toInstant(), window.closeAt().toInstant()));
            svg.empty("path", "class", "line", "d", "M" + Markup.number(x(window.slack().openEarliestAt()))
                    + " " + Markup.number(over + high / 2) + "H"
                    + Markup.number(x(window.slack().closeLatestAt())));
            svg.empty("rect", "x", left, "y", over, "width", width, "height", high, "class", "box");
            number(window.sheet(), left + width / 2, over + high / 2 + 5, width);
            svg.close("g");
        }
    }

    /** A sheet's number where its window is broad enough for it; at its aim it always stands. */
    private void number(int sheet, double x, double y, double width) {
        double wide = Drawing.LETTER_WIDE * TextWidth.of("" + sheet);
        if (wide * LETTER <= width) {
            svg.label(x, y, "" + sheet, "class", wide * LETTER_ON_PHONES <= width ? "middle" : "middle fine");
        }
    }

    /** A mark at every full hour of the clocks; where they change, the hours beside it with their offsets. */
    private void hours() {
        List<ZonedDateTime> hours =
                night.times().fullHours(from.toInstant(), from.plusSeconds((long) lastsS).toInstant());
        for (int number = 0; number < hours.size(); number++) {
            ZonedDateTime hour = hours.get(number);
            double x = x(hour.toOffsetDateTime());
            svg.empty("path", "d", "M" + Markup.number(x) + " " + Markup.number(top + SKY_TOP + SKY_HEIGHT)
                    + "v5", "class", "line");
            svg.label(x, top + HOURS_TOP, String.format(Locale.ROOT, "%02d", hour.getHour()), "class",
                    "middle");
            if (changes(hours, number - 1) || changes(hours, number)) {
                svg.label(x, top + HOURS_TOP + 11, Wording.offset(hour.toOffsetDateTime()), "font-size", 9,
                        "class", "middle");
            }
        }
    }

    /** Whether the clocks change between an hour and the next one. */
    private static boolean changes(List<ZonedDateTime> hours, int number) {
        return number >= 0 && number + 1 < hours.size()
                && !hours.get(number).getOffset().equals(hours.get(number + 1).getOffset());
    }
}
