package gloam.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.support.Samples;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StopsTest {

    private static final double ROUNDING = 1e-12;

    static Stream<Named<Double>> stops() {
        return Samples.of(100, random -> random.nextDouble(-30, 30));
    }

    @Test
    void aStopIsADoubling() {
        assertEquals(1, Stops.between(3, 6), ROUNDING);
        assertEquals(-2, Stops.between(4, 1), ROUNDING);
        assertEquals(8, Stops.factor(3), ROUNDING);
        assertEquals(1, Stops.factor(0));
    }

    @ParameterizedTest
    @MethodSource("stops")
    void stopsComeBack(double stops) {
        assertEquals(stops, Stops.between(1, Stops.factor(stops)), ROUNDING);
    }
}
