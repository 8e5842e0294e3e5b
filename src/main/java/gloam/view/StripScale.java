package gloam.view;

import java.time.Duration;
import java.time.OffsetDateTime;

/**
 * Where times and heights stand in the strip of a night.
 *
 * @param top    the strip's upper edge
 * @param from   when the strip begins
 * @param lastsS how long it lasts, in seconds
 */
record StripScale(double top, OffsetDateTime from, double lastsS) {

    static final double WIDTH = 640;
    static final double LEFT = 40;
    static final double PLOT = WIDTH - 2 * LEFT;
    static final double SKY_TOP = 48;
    static final double SKY_HEIGHT = 120;
    static final double BAR_HEIGHT = 22;
    static final double HOURS_TOP = SKY_TOP + SKY_HEIGHT + 8 + BAR_HEIGHT + 16;

    /** That of a night with a course of its sky. */
    static StripScale of(PlanReport.PlannedNightRow night, double top) {
        OffsetDateTime from = night.course().get(0).at();
        return new StripScale(top, from, Math.max(1, Duration.between(from,
                night.course().get(night.course().size() - 1).at()).toSeconds()));
    }

    double x(OffsetDateTime at) {
        return LEFT + PLOT * Math.max(0, Math.min(1, Duration.between(from, at).toSeconds() / lastsS));
    }

    double y(double heightDeg) {
        return top + SKY_TOP + SKY_HEIGHT * (1 - heightDeg / 90);
    }
}
