package gloam.planner;

import gloam.ephemeris.Night;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.zone.ZoneOffsetTransition;
import java.util.Locale;
import java.util.Optional;

/** Puts into words that the clocks of a site are put forward or back during a night. */
final class ClockChange {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private ClockChange() {
    }

    /** The change of a night, if there is one. */
    static Optional<String> of(Night night) {
        return change(night).map(ClockChange::words);
    }

    /**
     * A part of the night without what the clocks skip at its ends, the last minute that they show included; empty
     * where they skip all of it.
     */
    static Optional<Limits.TimeOfNight> shown(Night night, Limits.TimeOfNight time) {
        Optional<ZoneOffsetTransition> skip = change(night).filter(ZoneOffsetTransition::isGap);
        if (skip.isEmpty()) {
            return Optional.of(time);
        }
        LocalTime last = skip.get().getDateTimeBefore().minusMinutes(1).toLocalTime();
        LocalTime next = skip.get().getDateTimeAfter().toLocalTime();
        Limits.TimeOfNight skipped = new Limits.TimeOfNight(last.plusMinutes(1), next.minusMinutes(1));
        boolean all = skipped.holds(time.from()) && skipped.holds(time.to()) && !time.holds(next);
        return all ? Optional.empty() : Optional.of(new Limits.TimeOfNight(
                skipped.holds(time.from()) ? next : time.from(), skipped.holds(time.to()) ? last : time.to()));
    }

    private static Optional<ZoneOffsetTransition> change(Night night) {
        return Optional.ofNullable(night.site().zone().getRules().nextTransition(night.span().start()))
                .filter(change -> night.span().contains(change.getInstant()));
    }

    private static String words(ZoneOffsetTransition change) {
        return "on " + NightTimes.date(change.getDateTimeAfter().toLocalDate()) + " the clocks go "
                + (change.isGap() ? "forward" : "back") + " from " + time(change.getDateTimeBefore()) + " to "
                + time(change.getDateTimeAfter())
                + (change.isGap() ? "" : "; times that come twice stand with their offset from UTC");
    }

    private static String time(LocalDateTime at) {
        return TIME.format(at);
    }
}
