package gloam.view;

import gloam.answer.MoonAt;
import gloam.ephemeris.Appearance;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The Moon at an instant.
 *
 * @param at                  the instant
 * @param phase               the phase's name, such as {@code waxing crescent}
 * @param illuminatedFraction lit share of the disc
 * @param phaseAngleDeg       angle Sun–Moon–site, 0 when full
 * @param ageDays             days since new moon; null where the ephemeris does not reach back to it
 * @param angularDiameterDeg  of the disc from the site
 * @param distanceKm          from the site
 * @param magnitude           V outside the atmosphere
 * @param quarters            the next four quarters
 */
public record MoonRow(OffsetDateTime at, String phase, double illuminatedFraction, double phaseAngleDeg,
                      OptionalDouble ageDays, double angularDiameterDeg, double distanceKm, double magnitude,
                      List<QuarterRow> quarters) {

    private static final double SECONDS_A_DAY = 86_400;

    static MoonRow of(MoonAt moon, SiteClock clock) {
        Appearance seen = moon.seen();
        return new MoonRow(clock.asked(moon.at()), moon.phase().label(), seen.illuminatedFraction(),
                seen.phaseAngle().degrees(), moon.age().map(MoonRow::days).orElse(OptionalDouble.empty()),
                2 * seen.semidiameter().degrees(), seen.position().distanceKm(), seen.magnitude(),
                moon.quarters().stream()
                        .map(quarter -> new QuarterRow(clock.event(quarter.at()), quarter.name().label())).toList());
    }

    private static OptionalDouble days(Duration age) {
        return OptionalDouble.of(age.toMillis() / 1000.0 / SECONDS_A_DAY);
    }

    /** A quarter and when it comes. */
    public record QuarterRow(OffsetDateTime at, String what) {
    }
}
