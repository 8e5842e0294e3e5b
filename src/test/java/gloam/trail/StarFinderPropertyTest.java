package gloam.trail;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Star;
import gloam.ephemeris.orekit.OrekitEphemeris;
import gloam.gear.Site;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.support.Samples;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A star found for a point of the sheet stands there, on every kind of sky. */
class StarFinderPropertyTest {

    /** The finder stops at 1e-10 rad; the rest is rounding. */
    private static final double WITHIN_MM = 1e-6;

    private static final Ephemeris REAL = OrekitEphemeris.builtIn();
    private static final Instant FROM = Instant.parse("2027-01-01T00:00:00Z");

    /** A camera at a site, a point of its sheet and an exposure. */
    record Sample(Site site, Framing framing, double xMm, double yMm, Interval span) {
    }

    static Stream<Named<Sample>> samples() {
        return Samples.of(60, StarFinderPropertyTest::draw);
    }

    private static Sample draw(RandomGenerator random) {
        List<Site> sites = Places.all();
        Direction aim = Direction.ofDegrees(random.nextDouble(0, 360), random.nextDouble(0, 90));
        Interval span = Interval.lasting(FROM.plusSeconds(random.nextLong(0, 365 * 86400L)),
                Duration.ofMinutes(40));
        return new Sample(sites.get(random.nextInt(sites.size())),
                Framing.level(aim, Cameras.rectilinear(100, 80, 80)),
                random.nextDouble(-40, 40), random.nextDouble(-40, 40), span);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void standsThereAtMidExposure(Sample sample) {
        for (Ephemeris ephemeris : List.of(REAL, new AnalyticEphemeris(), new TurningSky())) {
            TrailEstimator through = new TrailEstimator(ephemeris, sample.site);
            for (TrailEstimator estimator : List.of(through, through.airless())) {
                Star star = estimator.starAt(sample.framing, sample.xMm, sample.yMm, sample.span);
                Framing.Point point = estimator.track(sample.framing, star, sample.span)
                        .at(sample.span.middle()).orElseThrow();
                assertEquals(sample.xMm, point.xMm(), WITHIN_MM);
                assertEquals(sample.yMm, point.yMm(), WITHIN_MM);
            }
        }
    }
}
