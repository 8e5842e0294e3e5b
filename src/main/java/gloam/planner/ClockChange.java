package gloam.planner;

import gloam.ephemeris.Night;
import java.time.LocalDateTime;
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
        return Optional.ofNullable(night.site().zone().getRules().nextTransition(night.span().start()))
                .filter(change -> night.span().contains(change.getInstant())).map(ClockChange::words);
    }

    private static String words(ZoneOffsetTransition change) {
        return "the clocks go " + (change.isGap() ? "forward" : "back") + " at " + time(change.getDateTimeBefore()) + " to "
                + time(change.getDateTimeAfter())
                + (change.isGap() ? "" : "; an opening at a time that comes twice is told with its offset from UTC");
    }

    private static String time(LocalDateTime at) {
        return TIME.format(at);
    }
}
