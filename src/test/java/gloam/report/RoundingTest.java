package gloam.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import gloam.units.Angle;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

class RoundingTest {

    @Test
    void positionsKeepATwentiethOfASecondOfArc() {
        assertEquals(123.45679, Rounding.positionDeg(Angle.ofDegrees(123.456789)));
    }

    @Test
    void azimuthNeverRoundsUpToAFullTurn() {
        assertEquals(0, Rounding.azimuthDeg(Angle.ofDegrees(359.999999)));
        assertEquals(270, Rounding.azimuthDeg(Angle.ofDegrees(-90)));
    }

    @Test
    void minusZeroIsZero() {
        assertEquals(0.0, Rounding.stops(-0.0001), 0);
        assertEquals(Double.doubleToLongBits(0.0), Double.doubleToLongBits(Rounding.stops(-0.0001)));
    }

    @Test
    void timesAndLightKeepTheirLeadingDigits() {
        assertEquals(9414.2, Rounding.seconds(9414.237));
        assertEquals(0.033333, Rounding.seconds(1 / 30.0));
        assertEquals(2.474e-4, Rounding.light(2.47362e-4));
        assertEquals(399419.927, Rounding.distanceKm(399419.92749));
    }

    @Test
    void unknownMagnitudesAreNone() {
        assertFalse(Rounding.magIfKnown(Double.NaN).isPresent());
        assertFalse(Rounding.magIfKnown(Double.NEGATIVE_INFINITY).isPresent());
    }

    @Test
    void clocksShowTheZoneOfTheSiteToATenth() {
        SiteClock clock = new SiteClock(ZoneId.of("Asia/Kolkata"));
        assertEquals(OffsetDateTime.parse("2027-02-09T05:29:59.9+05:30"),
                clock.event(Instant.parse("2027-02-08T23:59:59.949Z")));
        assertEquals(OffsetDateTime.parse("2027-02-09T05:30:00+05:30"),
                clock.event(Instant.parse("2027-02-08T23:59:59.950Z")));
        assertEquals(OffsetDateTime.parse("2027-02-09T05:29:59.949+05:30"),
                clock.asked(Instant.parse("2027-02-08T23:59:59.949Z")));
    }
}
