package gloam.light;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.support.ReferenceTable;
import gloam.support.ReferenceTable.Row;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class GroundLightReferenceTest {

    static Stream<Row> sun() {
        return ReferenceTable.read("explanatory-supplement/sun-illuminance.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("sun")
    void sunlightFollowsTheSupplement(Row row) {
        double expectedLx = row.number("lux");
        assertEquals(expectedLx, GroundLight.sunLx(row.number("altitudeDeg")), 0.0025 * expectedLx);
    }

    static Stream<Row> moon() {
        return ReferenceTable.read("explanatory-supplement/moon-illuminance.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("moon")
    void moonlightFollowsTheSupplement(Row row) {
        double expectedLx = row.number("lux");
        double givenLx = GroundLight.moonLx(row.number("altitudeDeg"), row.number("phaseDeg"),
                row.number("parallaxArcmin") / 60);
        assertEquals(expectedLx, givenLx, 0.005 * expectedLx);
    }
}
