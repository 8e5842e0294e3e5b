package gloam.trail;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.Direction;
import gloam.gear.Projection;
import gloam.support.Samples;
import gloam.units.Angle;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FramingPropertyTest {

    /** Rounding of doubles, most of it in azimuths next to the zenith and in points far off the axis. */
    private static final double ROUNDING_MM = 1e-8;

    /** A framing and a point on its frame. */
    record Sample(Framing framing, double xMm, double yMm) {
    }

    static Stream<Named<Sample>> samples() {
        return Samples.of(300, FramingPropertyTest::draw);
    }

    private static Sample draw(RandomGenerator random) {
        Projection projection = Projection.values()[random.nextInt(Projection.values().length)];
        double widthMm = random.nextDouble(20, 120);
        double heightMm = random.nextDouble(20, 120);
        double focalLengthMm = random.nextDouble(60, 300);
        Direction aim = Direction.ofDegrees(random.nextDouble(0, 360), random.nextDouble(-90, 90));
        Framing framing = new Framing(aim, Angle.ofDegrees(random.nextDouble(-180, 180)),
                Cameras.of(focalLengthMm, widthMm, heightMm, projection));
        return new Sample(framing, random.nextDouble(-widthMm / 2, widthMm / 2),
                random.nextDouble(-heightMm / 2, heightMm / 2));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void pointsComeBack(Sample sample) {
        Direction direction = sample.framing.toSky(sample.xMm, sample.yMm);
        assertFalls(sample, sample.framing, direction);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void distanceFromTheCentreTellsTheAngleFromTheAxis(Sample sample) {
        double focalLengthMm = sample.framing.camera().lens().focalLengthMm();
        double radius = Math.hypot(sample.xMm, sample.yMm) / focalLengthMm;
        double expectedRad = switch (sample.framing.camera().lens().projection()) {
            case RECTILINEAR -> Math.atan(radius);
            case EQUIDISTANT -> radius;
            case EQUISOLID -> 2 * Math.asin(radius / 2);
        };
        Direction direction = sample.framing.toSky(sample.xMm, sample.yMm);
        // rounding in the haversine
        assertEquals(expectedRad, direction.to(sample.framing.aim()).radians(), 1e-8);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void anAimThatPlacesADirectionDoesSo(Sample sample) {
        Direction direction = Direction.ofDegrees(sample.xMm * 100, sample.yMm);
        sample.framing.placing(direction, sample.xMm, sample.yMm)
                .ifPresent(framing -> assertFalls(sample, framing, direction));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void anAimIsFoundForWhatAnAimCanPlace(Sample sample) {
        Direction direction = sample.framing.toSky(sample.xMm, sample.yMm);
        Framing found = sample.framing.placing(direction, sample.xMm, sample.yMm).orElseThrow();
        assertFalls(sample, found, direction);
    }

    private static void assertFalls(Sample sample, Framing framing, Direction direction) {
        Framing.Point point = framing.toFrame(direction).orElseThrow();
        assertEquals(sample.xMm, point.xMm(), ROUNDING_MM);
        assertEquals(sample.yMm, point.yMm(), ROUNDING_MM);
    }
}
