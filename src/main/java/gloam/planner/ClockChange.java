package gloam.planner;

import gloam.ephemeris.Night;
import java.time.LocalTime;
import java.time.zone.ZoneOffsetTransition;
import java.util.Optional;

/** Knows when the clocks of a site are put forward or back during a night. */
public final class ClockChange {

    private ClockChange() {
    }

    /** The change of a night, if there is one. */
    public static Optional<ZoneOffsetTransition> of(Night night) {
        return Optional.ofNullable(night.site().zone().getRules().nextTransition(night.span().start()))
                .filter(change -> night.span().contains(change.getInstant()));
    }

    /**
     * A part of the night without what the clocks skip at its ends, the last minute that they show included;
     * empty where they skip all of it.
     */
    static Optional<Limits.TimeOfNight> shown(Night night, Limits.TimeOfNight time) {
        Optional<ZoneOffsetTransition> skip = of(night).filter(ZoneOffsetTransition::isGap);
        if (skip.isEmpty()) {
            return Optional.of(time);
        }
        LocalTime last = skip.get().getDateTimeBefore().minusMinutes(1).toLocalTime();
        LocalTime next = skip.get().getDateTimeAfter().toLocalTime();
        Limits.TimeOfNight skipped = new Limits.TimeOfNight(last.plusMinutes(1), next.minusMinutes(1));
        boolean all = skipped.holds(time.from()) && skipped.holds(time.to()) && !time.holds(next);
        return all ? Optional.empty() : Optional.of(new Limits.TimeOfNight(
                skipped.holds(time.from()) ? next : time.from(), skipped.holds(time.to()) ? last
                : time.to()));
    }
}
