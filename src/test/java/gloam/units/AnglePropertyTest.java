package gloam.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.support.Samples;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class AnglePropertyTest {

    /** Rounding of doubles of a few thousand degrees. */
    private static final double ROUNDING = 1e-11;

    static Stream<Named<Double>> degrees() {
        return Samples.of(200, random -> random.nextDouble(-3000, 3000));
    }

    @ParameterizedTest
    @MethodSource("degrees")
    void degreesComeBack(double degrees) {
        assertEquals(degrees, Angle.ofDegrees(degrees).degrees(), ROUNDING);
        assertEquals(degrees, Angle.ofRadians(Angle.ofDegrees(degrees).radians()).degrees(), ROUNDING);
    }

    @ParameterizedTest
    @MethodSource("degrees")
    void rangesKeepTheDirection(double degrees) {
        Angle angle = Angle.ofDegrees(degrees);
        for (Angle brought : new Angle[] {angle.positive(), angle.signed()}) {
            assertEquals(angle.sin(), brought.sin(), ROUNDING);
            assertEquals(angle.cos(), brought.cos(), ROUNDING);
        }
        assertTrue(angle.positive().radians() >= 0 && angle.positive().radians() < 2 * Math.PI);
        assertTrue(angle.signed().radians() > -Math.PI && angle.signed().radians() <= Math.PI);
    }
}
