package gloam.view;

import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.HighStand;
import gloam.ephemeris.Night;
import gloam.ephemeris.SkyPosition;
import gloam.ephemeris.Target;
import gloam.units.Angle;
import gloam.units.Interval;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;

/**
 * When a target stands above an altitude in darkness, night by night.
 *
 * @param generatedAt when the report was made
 * @param place       where
 * @param target      the target's name
 * @param altitudeDeg the least apparent altitude
 * @param nights      every night asked for, in order
 */
public record HighReport(OffsetDateTime generatedAt, Place place, String target, double altitudeDeg,
                         List<HighNightRow> nights) implements Report {

    /**
     * The report of a target over nights at one site.
     *
     * @param nights at least one
     */
    public static HighReport of(Ephemeris ephemeris, List<Night> nights, String name, Target target, Angle least,
                                Instant now) {
        return new HighReport(new SiteClock(nights.get(0).site().zone()).asked(now),
                Place.of(nights.get(0).site()), name, least.degrees(),
                nights.stream().map(night -> HighNightRow.of(ephemeris, night, target, least)).toList());
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
    public record HighNightRow(LocalDate night, double hours, double moonlessHours, List<SpanRow> spans) {

        static HighNightRow of(Ephemeris ephemeris, Night night, Target target, Angle least) {
            List<HighStand> stands = HighStand.of(ephemeris, night, target, least);
            List<Interval> spans = stands.stream().map(HighStand::span).toList();
            return new HighNightRow(night.date(), hours(spans),
                    hours(spans.stream().flatMap(span -> span.without(night.moonUp()).stream()).toList()),
                    stands.stream().map(stand -> SpanRow.of(stand, night,
                            ephemeris.position(target, night.site(), stand.highestAt()))).toList());
        }

        private static double hours(List<Interval> spans) {
            return Interval.total(spans).toMillis() / 3.6e6;
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
    public record SpanRow(OffsetDateTime from, OffsetDateTime to, OffsetDateTime highestAt,
                          double highestAltitudeDeg, double azimuthDeg) {

        static SpanRow of(HighStand stand, Night night, SkyPosition highest) {
            SiteClock clock = new SiteClock(night.site().zone());
            return new SpanRow(clock.event(stand.span().start()), clock.event(stand.span().endExclusive()),
                    clock.event(stand.highestAt()), highest.apparentAltitude().degrees(),
                    highest.azimuth().positive().degrees());
        }
    }
}
