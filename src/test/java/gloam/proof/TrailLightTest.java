package gloam.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Star;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.units.Angle;
import java.time.Instant;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TrailLightTest {

    /**
     * Mean B−V of the planets by Mallama et al. 2017, Icarus 282, 19, and of the Moon by Krisciunas and
     * Schaefer 1991; from memory.
     */
    @ParameterizedTest
    @CsvSource({"SUN, 0.65", "MOON, 0.91", "MERCURY, 0.97", "VENUS, 0.81", "MARS, 1.43", "JUPITER, 0.87",
            "SATURN, 1.09",
        "URANUS, 0.50", "NEPTUNE, 0.41"})
    void bodiesHaveTheirColours(Body body, double bv) {
        Appearance seen = new AnalyticEphemeris()
                .appearance(body, Places.MID_NORTH, Instant.parse("2027-02-08T20:00:00Z"));
        TrailLight light = TrailLight.of(body, seen);
        assertEquals(bv, light.colourBv());
        assertEquals(seen.magnitude(), light.magnitude());
        assertEquals(seen.semidiameter(), light.semidiameter());
        Star star = new Star("a star", 10, 20, 0, 0, 3, bv);
        assertEquals(new TrailLight(star, 3, bv, Angle.ZERO), TrailLight.of(star));
    }
}
