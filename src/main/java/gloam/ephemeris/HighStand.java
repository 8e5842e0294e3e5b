package gloam.ephemeris;

import gloam.units.FunctionOfTime;
import gloam.units.FunctionOfTime.Extremum;
import gloam.units.Angle;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A target at or above an altitude while it is dark.
 *
 * @param span      from when to when
 * @param highestAt when in it the target is highest
 */
public record HighStand(Interval span, Instant highestAt) {

    private static final Duration STEP = Duration.ofMinutes(30);

    /** Every such span of a night, refraction included, in order of time; none where it is never both. */
    public static List<HighStand> of(Ephemeris ephemeris, Night night, Target target, Angle least) {
        return night.darkness().stream().flatMap(dark -> of(ephemeris, night, target, least, dark)).toList();
    }

    private static Stream<HighStand> of(Ephemeris ephemeris, Night night, Target target, Angle least,
                                        Interval dark) {
        FunctionOfTime altitude = FunctionOfTime.of(dark, STEP,
                at -> ephemeris.position(target, night.site(), at).apparentAltitude().radians());
        return altitude.crossings(least.radians()).above().stream().map(span ->
                new HighStand(span, highest(ephemeris, night, target, altitude.extrema(), span)));
    }

    private static Instant highest(Ephemeris ephemeris, Night night, Target target, List<Extremum> turns,
                                   Interval span) {
        Stream<Instant> inside = turns.stream().map(Extremum::at).filter(span::contains);
        return Stream.concat(inside, Stream.of(span.start(), span.endExclusive()))
                .max(Comparator.comparing(at -> ephemeris.position(target, night.site(), at)
                .airlessAltitude()))
                .orElseThrow();
    }
}
