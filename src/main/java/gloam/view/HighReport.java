package gloam.view;

import gloam.gear.Site;
import gloam.answer.HighStands;
import gloam.ephemeris.HighStand;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;

/**
 * When a target stands above an altitude in darkness, night by night.
 *
 * @param generatedAt when the report was made
 * @param site        where
 * @param target      the target's name
 * @param altitudeDeg the least apparent altitude
 * @param nights      every night asked for, in order
 */
public record HighReport(OffsetDateTime generatedAt, Site site, String target, double altitudeDeg,
                         List<HighNightRow> nights) implements Report {

    /** The report of a target over nights at one site. */
    public static HighReport of(HighStands found, Instant now) {
        SiteClock clock = new SiteClock(found.site().zone());
        return new HighReport(clock.at(now), found.site(), found.target(), found.least().degrees(),
                found.nights().stream().map(night -> HighNightRow.of(night, clock)).toList());
    }

    @Override
    public boolean empty() {
        return nights.stream().allMatch(night -> night.spans().isEmpty());
    }

    /**
     * One night.
     *
     * @param night         date of its evening
     * @param hours         how long the target stands so high in darkness
     * @param moonlessHours how long of this the Moon is down
     * @param spans         when, in order
     */
    public record HighNightRow(LocalDate night, double hours, double moonlessHours, List<StandRow> spans) {

        static HighNightRow of(HighStands.HighNight night, SiteClock clock) {
            return new HighNightRow(night.evening(), hours(night.together()), hours(night.moonless()),
                    night.stands().stream().map(stand -> StandRow.of(stand, clock)).toList());
        }

        private static double hours(Duration time) {
            return time.toMillis() / 3.6e6;
        }
    }

    /**
     * One span of a night.
     *
     * @param from               when it begins
     * @param to                 when it ends
     * @param highestAt          when in it the target is highest
     * @param highestAltitudeDeg how high then, apparent
     * @param azimuthDeg         and where
     */
    public record StandRow(OffsetDateTime from, OffsetDateTime to, OffsetDateTime highestAt,
                          double highestAltitudeDeg, double azimuthDeg) {

        static StandRow of(HighStands.Stand found, SiteClock clock) {
            HighStand stand = found.stand();
            return new StandRow(clock.at(stand.span().start()), clock.at(stand.span().endExclusive()),
                    clock.at(stand.highestAt()), found.highest().apparentAltitude().degrees(),
                    found.highest().azimuth().positive().degrees());
        }
    }
}
