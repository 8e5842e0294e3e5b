package gloam.view;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Locale;

/**
 * The nights of a timetable drawn as strips over the time from sunset to sunrise: how bright the sky is, how
 * the Moon goes, what cloud the forecast has, and the windows beneath.
 */
final class NightStrip {

    private static final double WIDTH = 1000;
    private static final double LEFT = 10;
    private static final double NIGHT_HEIGHT = 150;
    private static final double SKY_TOP = 24;
    private static final double SKY_HEIGHT = 60;
    private static final double CLOUD_DEPTH = 20;
    private static final double BAR_TOP = 90;
    private static final double BAR_HEIGHT = 26;
    private static final double HOURS_TOP = BAR_TOP + BAR_HEIGHT + 16;
    private static final double DARKEST_MAG = 22;
    private static final double BRIGHTEST_MAG = 8;

    private final Markup svg = new Markup();
    private final PlanReport.PlannedNightRow night;
    private final double top;
    private final OffsetDateTime from;
    private final double lastsS;

    private NightStrip(PlanReport.PlannedNightRow night, double top) {
        this.night = night;
        this.top = top;
        List<PlanReport.SkyRow> course = night.course();
        this.from = course.get(0).at();
        this.lastsS = Math.max(1, Duration.between(from, course.get(course.size() - 1).at()).toSeconds());
    }

    /** All nights that have one, one below the other. */
    static String of(PlanReport plan) {
        return drawn(plan.title(), plan.nights().stream().filter(night -> !night.course().isEmpty())
                .toList());
    }

    /** One night; empty where the Sun does not set. */
    static String of(PlanReport.PlannedNightRow night) {
        return night.course().isEmpty() ? "" : drawn(title(night), List.of(night));
    }

    private static String drawn(String title, List<PlanReport.PlannedNightRow> nights) {
        Drawing all = new Drawing(WIDTH + 2 * LEFT, Math.max(1, nights.size()) * NIGHT_HEIGHT, 13, title, "");
        for (int number = 0; number < nights.size(); number++) {
            all.add(new NightStrip(nights.get(number), number * NIGHT_HEIGHT).strip());
        }
        return all.finished();
    }

    private static String title(PlanReport.PlannedNightRow night) {
        return night.times().dates() + ", " + night.site();
    }

    private String strip() {
        svg.label(LEFT, top + 16, title(night) + " (" + night.zone() + ")");
        sky();
        moon();
        cloud();
        windows();
        hours();
        return svg.toString();
    }

    private double x(OffsetDateTime at) {
        return LEFT + WIDTH * Math.max(0, Math.min(1, Duration.between(from, at).toSeconds() / lastsS));
    }

    /** The zenith's brightness as grey, a strip for each sample. */
    private void sky() {
        List<PlanReport.SkyRow> course = night.course();
        svg.open("g", "class", "sky");
        for (int i = 0; i + 1 < course.size(); i++) {
            double left = x(course.get(i).at());
            double light = light(course.get(i).zenithMagArcsec2());
            svg.empty("rect", "x", left, "y", top + SKY_TOP, "width", x(course.get(i + 1).at()) - left + 0.5,
                    "height", SKY_HEIGHT, "fill", grey(light), "style", "--light:" + Markup.number(light));
        }
        svg.close("g");
    }

    /** How light a sky is drawn, 0 to 1; the page takes it for other colours too. */
    private static double light(double mag) {
        return Math.max(0, Math.min(1, (DARKEST_MAG - mag) / (DARKEST_MAG - BRIGHTEST_MAG)));
    }

    private static String grey(double light) {
        int level = (int) Math.round(18 + 190 * light);
        return String.format(Locale.ROOT, "#%02x%02x%02x", level, level, Math.min(255, level + 12));
    }

    /** The Moon's altitude from the horizon, the band's lower edge, to the zenith, its upper one. */
    private void moon() {
        StringBuilder points = new StringBuilder();
        for (PlanReport.SkyRow sky : night.course()) {
            if (sky.moonAltitudeDeg() >= 0) {
                points.append(points.isEmpty() ? "" : " ").append(Markup.number(x(sky.at()))).append(',')
                        .append(Markup.number(top + SKY_TOP + SKY_HEIGHT * (1 - sky.moonAltitudeDeg() / 90)));
            } else {
                moonLine(points);
            }
        }
        moonLine(points);
    }

    private void moonLine(StringBuilder points) {
        if (!points.isEmpty()) {
            svg.empty("polyline", "points", points, "class", "moon");
            points.setLength(0);
        }
    }

    /** The forecast's cloud, which hangs down from the sky's upper edge: by its full depth where overcast. */
    private void cloud() {
        List<CloudRow> forecast = night.forecast();
        if (forecast.isEmpty()) {
            return;
        }
        String edge = Markup.number(top + SKY_TOP);
        StringBuilder points = new StringBuilder(Markup.number(x(forecast.get(0).at()))).append(',')
                .append(edge);
        for (CloudRow row : forecast) {
            points.append(' ').append(Markup.number(x(row.at()))).append(',')
                    .append(Markup.number(top + SKY_TOP + CLOUD_DEPTH * row.cloudFraction()));
        }
        points.append(' ').append(Markup.number(x(forecast.get(forecast.size() - 1).at()))).append(',')
                .append(edge);
        svg.open("g");
        svg.words("title", CloudRow.words(forecast));
        svg.empty("polygon", "points", points, "class", "cloud");
        svg.close("g");
        svg.empty("rect", "x", LEFT + WIDTH - 16, "y", top + 2, "width", 16.0, "height",
                CLOUD_DEPTH, "class", "cloud");
        svg.label(LEFT + WIDTH - 22, top + 16, "cloud by the forecast, as deep as this where overcast",
                "class", "end");
    }

    private void windows() {
        for (PlanReport.WindowRow window : night.windows()) {
            double left = x(window.openAt());
            double width = Math.max(3, x(window.closeAt()) - left);
            svg.open("g");
            svg.words("title", window.wish() + ", "
                    + night.times().exposure(window.openAt().toInstant(), window.closeAt().toInstant()));
            svg.empty("rect", "x", left, "y", top + BAR_TOP, "width", width, "height", BAR_HEIGHT, "class",
                    "box");
            svg.label(left + width / 2, top + BAR_TOP + 18, String.valueOf(window.sheet()), "class",
                    "middle");
            svg.close("g");
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
                svg.label(x, top + HOURS_TOP + 13, Wording.offset(hour.toOffsetDateTime()), "font-size", 10,
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
