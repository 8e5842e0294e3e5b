package gloam.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Direction;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Site;
import gloam.gear.Skyline;
import gloam.gear.Vignetting;
import gloam.light.SkyBrightness;
import gloam.light.SkyLight;
import gloam.support.AnalyticEphemeris;
import gloam.units.Angle;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SheetLightTest {

    private static final Site SITE = new Site("Meadow", Angle.ofDegrees(41), Angle.ZERO, 900, ZoneOffset.UTC,
            21.5, 0.25, Skyline.FLAT);
    private static final Lens LENS =
            new Lens(120, List.of(FNumber.exact(8)), 0.9, Double.POSITIVE_INFINITY, 40, 0,
            Projection.RECTILINEAR, Vignetting.NONE);
    private static final Direction NORTH = Direction.ofDegrees(0, 41);

    @Test
    void starsOnTheEquatorRunFifteenSecondsOfArcASecond() {
        Exposed.Stars stars = SheetLight.stars(LENS, Optional.of(SITE),
                Optional.of(Direction.ofDegrees(180, 49)));
        // 120 mm times the Earth's turn, 7.292e-5 rad/s
        assertEquals(120 * 7.292e-5, stars.imageSpeedMmS(), 1e-6);
        assertEquals(0, SheetLight.stars(LENS, Optional.of(SITE), Optional.of(NORTH)).imageSpeedMmS(), 1e-8);
    }

    @Test
    void aSteadySkyIsKeptAsOneNumberAndDuskAsMany() {
        SkyLight sky = new SkyLight(new AnalyticEphemeris(), SITE);
        Opening night = SheetLight.computed(sky, NORTH, LENS,
                Interval.lasting(Instant.parse("2027-02-07T00:00:00Z"), Duration.ofHours(2)));
        assertEquals(1, night.illuminancesLx().size());
        Opening dusk = SheetLight.computed(sky, NORTH, LENS,
                Interval.lasting(Instant.parse("2027-02-06T18:00:00Z"), Duration.ofMinutes(40)));
        assertEquals(21, dusk.illuminancesLx().size());
        assertTrue(dusk.illuminancesLx().get(0) > 5 * dusk.illuminancesLx().get(20));
    }

    @Test
    void aMeasuredSkyLightsTheFilmByTheLens() {
        // q L / N² with q = π/4 · 0.9 and 21.5 mag/arcsec² = 10.8e4 · 10^(-0.4 · 21.5) cd/m²
        double expected = Math.PI / 4 * 0.9 * 10.8e4 * Math.pow(10, -0.4 * 21.5) / 64;
        Opening opening = SheetLight.measured(SkyBrightness.ofMagArcsec2(21.5), LENS,
                Interval.lasting(Instant.EPOCH, Duration.ofHours(1)));
        // the factor between the two units is given to three digits
        assertEquals(expected, opening.illuminancesLx().get(0), 0.01 * expected);
    }
}
