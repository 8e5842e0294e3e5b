package gloam.light;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Twilight grows towards the Sun as one over the angle to it, up to 10° from it. */
class TwilightTowardSunTest {

    private static final double ROUNDING = 1e-12;

    @Test
    void growsUntilTenDegreesFromTheSun() {
        double atTen = TwilightGlow.towardSun(10, 6);
        assertEquals(atTen / 2, TwilightGlow.towardSun(20, 6), ROUNDING);
        assertEquals(atTen / 1.2, TwilightGlow.towardSun(12, 6), ROUNDING);
        assertEquals(atTen, TwilightGlow.towardSun(7, 6), ROUNDING);
        assertEquals(atTen, TwilightGlow.towardSun(0, 6), ROUNDING);
    }
}
