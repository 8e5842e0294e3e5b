package gloam.view;

import gloam.answer.MoonAt;
import gloam.answer.Trails;
import gloam.ephemeris.Appearance;
import gloam.ephemeris.SkyPosition;
import gloam.planner.Plan;
import gloam.units.Finite;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * The Moon, in the same form in every report. What a report does not say is absent, or an empty list.
 *
 * @param at                  the instant described
 * @param phase               the phase's name, such as {@code waxing crescent}
 * @param illuminatedFraction lit share of the disc, 0 to 1
 * @param phaseAngleDeg       angle Sun–Moon–site in degrees, 0 at full moon
 * @param ageDays             days since new moon; also absent if the ephemeris does not reach back to it
 * @param angularDiameterDeg  apparent diameter of the disc, in degrees
 * @param distanceKm          distance from the site, in km
 * @param magnitude           V magnitude outside the atmosphere
 * @param azimuthDeg          azimuth in degrees, from north through east
 * @param apparentAltitudeDeg altitude in degrees, with refraction
 * @param fromAimDeg          angle between the Moon and the frame's centre, in degrees
 * @param inFrameAt           when its centre is first in the frame and above the skyline; also absent if not
 *                            before {@code lookedUntil}
 * @param lookedUntil         end of the time searched for {@code inFrameAt}
 * @param quarters            the next four quarters
 */
public record MoonRow(Optional<OffsetDateTime> at, Optional<String> phase, OptionalDouble illuminatedFraction,
                      OptionalDouble phaseAngleDeg, OptionalDouble ageDays, OptionalDouble angularDiameterDeg,
                      OptionalDouble distanceKm, OptionalDouble magnitude, OptionalDouble azimuthDeg,
                      OptionalDouble apparentAltitudeDeg, OptionalDouble fromAimDeg,
                      Optional<OffsetDateTime> inFrameAt,
                      Optional<OffsetDateTime> lookedUntil, List<QuarterRow> quarters) {

    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final double SECONDS_A_DAY = 86_400;

    /** The Moon over a site, with its phases. */
    static MoonRow of(MoonAt moon, SiteClock clock) {
        return seen(moon.at(), moon.seen(), Optional.of(moon.phase().label()),
                Finite.of(moon.age().map(MoonRow::days)),
                moon.quarters().stream().map(quarter -> new QuarterRow(clock.at(quarter.at()),
                quarter.name().label()))
                        .toList(), clock);
    }

    /** The Moon as it looks from a site. */
    static MoonRow of(Instant at, Appearance seen, SiteClock clock) {
        return seen(at, seen, Optional.empty(), NONE, List.of(), clock);
    }

    /** The Moon as a window meets it half-way through. */
    static MoonRow of(Instant at, Plan.MoonView moon, SiteClock clock) {
        SkyPosition position = moon.position();
        return new MoonRow(Optional.of(clock.at(at)), Optional.empty(),
                OptionalDouble.of(moon.illuminatedFraction()),
                NONE, NONE, NONE, OptionalDouble.of(position.distanceKm()), NONE,
                OptionalDouble.of(position.azimuth().degrees()),
                OptionalDouble.of(position.apparentAltitude().degrees()),
                OptionalDouble.of(moon.fromAim().degrees()), Optional.empty(), Optional.empty(), List.of());
    }

    /** The Moon that may come into a frame. */
    static MoonRow of(Trails.MoonComing moon, SiteClock clock) {
        return new MoonRow(Optional.empty(), Optional.empty(), NONE, NONE, NONE, NONE, NONE, NONE, NONE, NONE,
                NONE, moon.inFrameAt().map(clock::at), Optional.of(clock.at(moon.lookedUntil())), List.of());
    }

    /** Its looks and its next quarters, two sentences. */
    Document document() {
        Document document = Document.part();
        document.text("Moon at " + Wording.minute(at().orElseThrow()) + ": " + phase().orElseThrow() + ", "
                + Wording.number(100 * illuminatedFraction().orElseThrow(), 0) + " % lit"
                + (ageDays().isEmpty() ? "" : ", " + Wording.number(ageDays().getAsDouble(), 1) + " d old")
                + ", " + Wording.number(60 * angularDiameterDeg().orElseThrow(), 1) + "\u2032 across, "
                + Wording.kilometres(distanceKm().orElseThrow()) + " km away, "
                + Wording.signed(magnitude().orElseThrow(), 1) + " mag");
        if (!quarters().isEmpty()) {
            document.text("Next phases: " + quarters().stream()
                    .map(quarter -> quarter.what() + " " + quarter.at().toLocalDate() + " "
                            + Wording.second(quarter.at())).collect(Collectors.joining(", ")));
        }
        return document;
    }

    private static MoonRow seen(Instant at, Appearance seen, Optional<String> phase, OptionalDouble ageDays,
                                List<QuarterRow> quarters, SiteClock clock) {
        SkyPosition position = seen.position();
        return new MoonRow(Optional.of(clock.at(at)), phase, OptionalDouble.of(seen.illuminatedFraction()),
                OptionalDouble.of(seen.phaseAngle().degrees()), ageDays,
                OptionalDouble.of(seen.diameter().degrees()), OptionalDouble.of(position.distanceKm()),
                OptionalDouble.of(seen.magnitude()), OptionalDouble.of(position.azimuth().degrees()),
                OptionalDouble.of(position.apparentAltitude().degrees()), NONE, Optional.empty(),
                Optional.empty(), quarters);
    }

    private static double days(Duration age) {
        return age.toMillis() / 1000.0 / SECONDS_A_DAY;
    }

    /** A quarter and when it comes. */
    public record QuarterRow(OffsetDateTime at, String what) {
    }
}
