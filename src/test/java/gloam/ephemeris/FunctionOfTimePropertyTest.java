package gloam.ephemeris;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.units.Crossings.Crossing;
import gloam.units.FunctionOfTime;
import gloam.units.FunctionOfTime.Extremum;
import gloam.ephemeris.orekit.OrekitEphemeris;
import gloam.gear.Site;
import gloam.support.Places;
import gloam.support.Samples;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The search against looking at every second. */
class FunctionOfTimePropertyTest {

    private static final Instant START = Instant.parse("2027-01-01T00:00:00Z");
    private static final Interval DAY = Interval.lasting(START, Duration.ofDays(1));
    private static final Duration STEP = Duration.ofMinutes(30);
    private static final Ephemeris EPHEMERIS = OrekitEphemeris.builtIn();

    /** Waves of at least five hours, as smooth as the altitudes of bodies. */
    private record Waves(double[] amplitudes, double[] periodsS, double[] phasesRad)
            implements ToDoubleFunction<Instant> {

        static Waves drawn(RandomGenerator random) {
            int count = random.nextInt(1, 4);
            return new Waves(random.doubles(count, 0.1, 1).toArray(), random.doubles(count, 18_000, 100_000)
                    .toArray(),
                    random.doubles(count, 0, 2 * Math.PI).toArray());
        }

        @Override
        public double applyAsDouble(Instant at) {
            double seconds = Duration.between(START, at).toNanos() * 1e-9;
            double sum = 0;
            for (int i = 0; i < amplitudes.length; i++) {
                sum += amplitudes[i] * Math.sin(2 * Math.PI * seconds / periodsS[i] + phasesRad[i]);
            }
            return sum;
        }
    }

    static Stream<Named<Waves>> waves() {
        return Samples.of(12, Waves::drawn);
    }

    static Stream<Named<Site>> highSites() {
        return Samples.of(4, random -> Places.at(random.nextDouble(60, 89) * (random.nextBoolean() ? 1 : -1),
                random.nextDouble(-180, 180), 0));
    }

    @ParameterizedTest
    @MethodSource("waves")
    void crossingsAreThoseSeenBySecond(Waves waves) {
        FunctionOfTime finder = FunctionOfTime.of(DAY, STEP, waves);
        double[] values = values(waves);
        assertSame(bySecond(values, 0), finder.crossings(0).all());
        // Levels just inside every turning point: two crossings minutes apart, inside one step.
        for (Extremum turn : finder.extrema()) {
            double level = turn.value() + (turn.highest() ? -1e-5 : 1e-5);
            assertSame(bySecond(values, level), finder.crossings(level).all());
        }
    }

    @ParameterizedTest
    @MethodSource("waves")
    void turningPointsAreThoseSeenBySecond(Waves waves) {
        List<Extremum> found = FunctionOfTime.of(DAY, STEP, waves).extrema();
        double[] values = values(waves);
        List<Integer> expected = new ArrayList<>();
        for (int s = 1; s < values.length - 1; s++) {
            if ((values[s] - values[s - 1]) * (values[s + 1] - values[s]) < 0) {
                expected.add(s);
            }
        }
        assertEquals(expected.size(), found.size());
        for (int i = 0; i < found.size(); i++) {
            // Two seconds: the sampling shows it to one, and a flat top hides it for another.
            assertEquals(expected.get(i), Duration.between(START, found.get(i).at()).toMillis() / 1000.0, 2);
        }
    }

    @ParameterizedTest
    @MethodSource("highSites")
    void moonAtHighLatitudesIsMissedNever(Site site) {
        MoonCourse course = Courses.of(EPHEMERIS, site, DAY).moon();
        double[] heights = values(at -> {
            SkyPosition moon = EPHEMERIS.position(Body.MOON, site, at);
            return moon.airlessAltitude()
                    .degrees() + Math.toDegrees(Math.asin(1737.4 / moon.distanceKm())) + 34 / 60.0;
        });
        assertSame(bySecond(heights, 0), course.horizon().all());
    }

    private static void assertSame(List<Crossing> expected, List<Crossing> found) {
        assertEquals(expected.size(), found.size());
        for (int i = 0; i < expected.size(); i++) {
            assertEquals(expected.get(i).rising(), found.get(i).rising());
            double offS = Duration.between(expected.get(i).at(), found.get(i).at()).toNanos() * 1e-9;
            assertTrue(offS >= -1.01 && offS <= 0.01,
                    () -> "off by " + offS + " s of the second it was seen in");
        }
    }

    /** Each crossing at the second after it. */
    private static List<Crossing> bySecond(double[] values, double level) {
        List<Crossing> crossings = new ArrayList<>();
        for (int s = 1; s < values.length; s++) {
            if (values[s] >= level != values[s - 1] >= level) {
                crossings.add(new Crossing(START.plusSeconds(s), values[s] >= level));
            }
        }
        return crossings;
    }

    private static double[] values(ToDoubleFunction<Instant> function) {
        double[] values = new double[(int) DAY.seconds() + 1];
        for (int s = 0; s < values.length; s++) {
            values[s] = function.applyAsDouble(START.plusSeconds(s));
        }
        return values;
    }
}
