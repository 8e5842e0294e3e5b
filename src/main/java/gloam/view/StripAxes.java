package gloam.view;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.Locale;

/** The axes of a night's strip: heights, brightness of the sky, twilights, and hours by the site's clocks. */
final class StripAxes {

    /** How far offsets beside a change of the clocks reach past their hours towards each other. */
    private static final double APART = 12;

    private final PlanReport.PlannedNightRow night;
    private final StripScale scale;
    private final Markup svg;

    /** Adds them to a drawing. */
    StripAxes(PlanReport.PlannedNightRow night, StripScale scale, Markup svg) {
        this.night = night;
        this.scale = scale;
        this.svg = svg;
    }

    void draw() {
        axes();
        twilights();
        hours();
    }

    /** Heights on the left, brightness of the sky on the right. */
    private void axes() {
        for (int heightDeg = 0; heightDeg <= 90; heightDeg += 30) {
            svg.label(StripScale.LEFT - 6, scale.y(heightDeg) + 4, heightDeg + "°", "class", "end axis");
        }
        for (double mag = SkyGrey.DARKEST_MAG; mag >= SkyGrey.BRIGHTEST_MAG; mag -= 4) {
            svg.label(StripScale.LEFT + StripScale.PLOT + 6, scale.y(90 * SkyGrey.light(mag)) + 4,
                    Wording.plain(mag), "class", "axis");
        }
        svg.label(StripScale.WIDTH - 4, scale.y(90) - 20, "mag/arcsec²", "class", "end axis unit");
    }

    /** Where the Sun passes the depths that end twilights, between the samples beside them. */
    private void twilights() {
        List<PlanReport.SkyRow> course = night.course();
        for (int i = 0; i + 1 < course.size(); i++) {
            double before = course.get(i).sunAirlessAltitudeDeg();
            double after = course.get(i + 1).sunAirlessAltitudeDeg();
            double left = scale.x(course.get(i).at());
            double right = scale.x(course.get(i + 1).at());
            for (int depthDeg = -6; depthDeg >= -18; depthDeg -= 6) {
                if (before > depthDeg != after > depthDeg) {
                    double x = left + (right - left) * (depthDeg - before) / (after - before);
                    svg.empty("path", "d", "M" + Markup.number(x) + " " + Markup.number(scale.y(90) - 4)
                            + "v4", "class", "line");
                    svg.label(x, scale.y(90) - 7, "" + -depthDeg, "font-size", 10, "class", "axis"
                            + (depthDeg == -12 ? " middle" : before > after == depthDeg > -12 ? " end" : ""));
                }
            }
        }
    }

    /** A mark at every full hour of the clocks; where they change, the hours beside it with their offsets. */
    private void hours() {
        List<ZonedDateTime> hours = night.times().fullHours(scale.from().toInstant(),
                scale.from().plusSeconds((long) scale.lastsS()).toInstant());
        double y = scale.top() + StripScale.HOURS_TOP;
        for (int number = 0; number < hours.size(); number++) {
            ZonedDateTime hour = hours.get(number);
            double x = scale.x(hour.toOffsetDateTime());
            svg.empty("path", "d", "M" + Markup.number(x) + " " + Markup.number(scale.y(0)) + "v5", "class",
                    "line");
            svg.label(x, y, String.format(Locale.ROOT, "%02d", hour.getHour()), "class", "middle");
            boolean last = changes(hours, number);
            if (last || changes(hours, number - 1)) {
                svg.label(last ? x + APART : x - APART, y + 11, Wording.offset(hour.toOffsetDateTime()),
                        "font-size", 9, "class", last ? "offset end" : "offset");
            }
        }
    }

    /** Whether the clocks change between an hour and the next one. */
    private static boolean changes(List<ZonedDateTime> hours, int number) {
        return number >= 0 && number + 1 < hours.size()
                && !hours.get(number).getOffset().equals(hours.get(number + 1).getOffset());
    }
}
