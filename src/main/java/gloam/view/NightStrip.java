package gloam.view;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Locale;

/**
 * The nights of a timetable drawn as strips over the time from sunset to sunrise: how bright the sky is, how the Moon
 * goes, and the windows beneath.
 */
final class NightStrip {

    private static final double WIDTH = 1000;
    private static final double LEFT = 10;
    private static final double NIGHT_HEIGHT = 150;
    private static final double SKY_TOP = 24;
    private static final double SKY_HEIGHT = 60;
    private static final double BAR_TOP = 90;
    private static final double BAR_HEIGHT = 26;
    private static final double HOURS_TOP = BAR_TOP + BAR_HEIGHT + 16;
    private static final double DARKEST_MAG = 22;
    private static final double BRIGHTEST_MAG = 8;
    private static final String INK = "#1d1b18";
    private static final String MOON = "#e8dfb8";

    private final SvgText svg = new SvgText();
    private final PlanReport.NightRow night;
    private final double top;
    private final OffsetDateTime from;
    private final double lastsS;

    private NightStrip(PlanReport.NightRow night, double top) {
        this.night = night;
        this.top = top;
        List<PlanReport.SkyRow> course = night.course();
        this.from = course.get(0).at();
        this.lastsS = Math.max(1, Duration.between(from, course.get(course.size() - 1).at()).toSeconds());
    }

    /** All nights that have one, one below the other. */
    static String of(PlanReport plan) {
        return drawn(plan.title(), plan.nights().stream().filter(night -> !night.course().isEmpty()).toList());
    }

    /** One night; empty where the Sun does not set. */
    static String of(PlanReport.NightRow night) {
        return night.course().isEmpty() ? "" : drawn(title(night), List.of(night));
    }

    private static String drawn(String title, List<PlanReport.NightRow> nights) {
        SvgText all = new SvgText();
        double height = Math.max(1, nights.size()) * NIGHT_HEIGHT;
        all.raw("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" role=\"img\" viewBox=\"0 0 "
                + SvgText.number(WIDTH + 2 * LEFT) + " " + SvgText.number(height)
                + "\" font-family=\"serif\" font-size=\"13\">");
        all.words("title", "", title);
        all.empty("rect", "class=\"paper\" width=\"100%\" height=\"100%\" fill=\"#f7f5ef\"");
        for (int number = 0; number < nights.size(); number++) {
            all.raw(new NightStrip(nights.get(number), number * NIGHT_HEIGHT).strip());
        }
        return all.raw("</svg>").toString();
    }

    private static String title(PlanReport.NightRow night) {
        return night.times().dates() + ", " + night.site();
    }

    private String strip() {
        svg.label(LEFT, top + 16, "fill=\"" + INK + "\"", title(night) + " (" + night.zone() + ")");
        sky();
        moon();
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
        svg.raw("<g class=\"sky\">");
        for (int i = 0; i + 1 < course.size(); i++) {
            double left = x(course.get(i).at());
            svg.empty("rect", "x=\"" + SvgText.number(left) + "\" y=\"" + SvgText.number(top + SKY_TOP) + "\" width=\""
                    + SvgText.number(x(course.get(i + 1).at()) - left + 0.5) + "\" height=\"" + SvgText.number(SKY_HEIGHT)
                    + "\" " + shade(course.get(i).zenithMagArcsec2()));
        }
        svg.raw("</g>");
    }

    /** A grey, and for other colours of the page the lightness alone. */
    private static String shade(double mag) {
        double light = Math.max(0, Math.min(1, (DARKEST_MAG - mag) / (DARKEST_MAG - BRIGHTEST_MAG)));
        int level = (int) Math.round(18 + 190 * light);
        return String.format(Locale.ROOT, "fill=\"#%02x%02x%02x\" style=\"--light:%.2f\"", level, level,
                Math.min(255, level + 12), light);
    }

    /** The Moon's altitude from the horizon, the band's lower edge, to the zenith, its upper one. */
    private void moon() {
        StringBuilder points = new StringBuilder();
        for (PlanReport.SkyRow sky : night.course()) {
            if (sky.moonAltitudeDeg() >= 0) {
                points.append(points.isEmpty() ? "" : " ").append(SvgText.number(x(sky.at()))).append(',')
                        .append(SvgText.number(top + SKY_TOP + SKY_HEIGHT * (1 - sky.moonAltitudeDeg() / 90)));
            } else {
                moonLine(points);
            }
        }
        moonLine(points);
    }

    private void moonLine(StringBuilder points) {
        if (!points.isEmpty()) {
            svg.empty("polyline", "points=\"" + points + "\" fill=\"none\" stroke=\"" + MOON
                    + "\" stroke-width=\"2.5\"");
            points.setLength(0);
        }
    }

    private void windows() {
        for (PlanReport.WindowRow window : night.windows()) {
            double left = x(window.openAt());
            double width = Math.max(3, x(window.closeAt()) - left);
            svg.raw("<g>");
            svg.words("title", "", window.wish() + ", "
                    + night.times().exposure(window.openAt().toInstant(), window.closeAt().toInstant()));
            svg.empty("rect", "x=\"" + SvgText.number(left) + "\" y=\"" + SvgText.number(top + BAR_TOP) + "\" width=\""
                    + SvgText.number(width) + "\" height=\"" + SvgText.number(BAR_HEIGHT)
                    + "\" fill=\"#fffdf6\" stroke=\"" + INK + "\"");
            svg.label(left + width / 2, top + BAR_TOP + 18, "text-anchor=\"middle\" fill=\"" + INK + "\"",
                    String.valueOf(window.sheet()));
            svg.raw("</g>");
        }
    }

    /** A mark at every full hour of the clocks; where they change, the hours beside it with their offsets. */
    private void hours() {
        List<ZonedDateTime> hours =
                night.times().fullHours(from.toInstant(), from.plusSeconds((long) lastsS).toInstant());
        for (int number = 0; number < hours.size(); number++) {
            ZonedDateTime hour = hours.get(number);
            double x = x(hour.toOffsetDateTime());
            svg.empty("path", "d=\"M" + SvgText.number(x) + " " + SvgText.number(top + SKY_TOP + SKY_HEIGHT) + "v5\" stroke=\""
                    + INK + "\"");
            svg.label(x, top + HOURS_TOP, "text-anchor=\"middle\" fill=\"" + INK + "\"",
                    String.format(Locale.ROOT, "%02d", hour.getHour()));
            if (changes(hours, number - 1) || changes(hours, number)) {
                svg.label(x, top + HOURS_TOP + 13, "text-anchor=\"middle\" font-size=\"10\" fill=\"" + INK + "\"",
                        Wording.offset(hour.toOffsetDateTime()));
            }
        }
    }

    /** Whether the clocks change between an hour and the next one. */
    private static boolean changes(List<ZonedDateTime> hours, int number) {
        return number >= 0 && number + 1 < hours.size()
                && !hours.get(number).getOffset().equals(hours.get(number + 1).getOffset());
    }
}
