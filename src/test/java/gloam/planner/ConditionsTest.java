package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Night;
import gloam.light.LightSource;
import gloam.light.SkyBrightness;
import gloam.light.SkyLight;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** At which minutes of a night each thing holds that a wish requires. */
class ConditionsTest {

    private static final AnalyticEphemeris EPHEMERIS = new AnalyticEphemeris();
    private static final Direction SOUTH = Direction.ofDegrees(180, 40);

    private static NightSky sky(LocalDate date) {
        return new NightSky(EPHEMERIS, Night.of(EPHEMERIS, Places.MID_NORTH, date), List.of(),
                Optional.empty(), Optional.empty());
    }

    private static BitSet holds(Requirement what, Wish wish, NightSky sky) {
        Condition condition = Conditions.of(wish, sky, new Aiming(wish.aim(), sky, Trips.CAMERA)).stream()
                .filter(one -> one.what().equals(what)).findFirst().orElseThrow();
        return condition.holds(sky.sunDown());
    }

    private static Wish limited(Wish wish, Limits limits) {
        return new Wish(wish.name(), wish.aim(), wish.sky(), wish.tone(), wish.records(), wish.trail(),
                wish.shortest(),
                wish.longest(), wish.fNumbers(), wish.worth(), wish.repeat(), wish.film(), limits);
    }

    /** Common practice, no source: a fifth of a magnitude of moonlight leaves a sky dark. */
    @Test
    void aFifthOfAMagnitudeOfMoonlightIsDark() {
        NightSky sky = sky(LocalDate.of(2027, 2, 14));
        Wish wish = Trips.pointed("dark", SOUTH, SkyKind.DARK, new Wish.Tone.Free());
        BitSet holds = holds(new Requirement.OfSky(SkyKind.Part.NO_MOONLIGHT), wish, sky);
        assertFalse(holds.isEmpty());
        BitSet down = sky.sunDown();
        for (int minute = down.nextSetBit(0); minute >= 0; minute = down.nextSetBit(minute + 1)) {
            SkyLight.Sample light = sky.light(SOUTH, sky.clock().at(minute));
            SkyBrightness night = light.without(LightSource.MOON, LightSource.TWILIGHT);
            double addedMag = night.magArcsec2() - night.plus(light.of(LightSource.MOON)).magArcsec2();
            int at = minute;
            if (Math.abs(addedMag - 0.2) > 0.03) { // a light that is straight between nodes is off by less
                assertEquals(addedMag < 0.2, holds.get(minute), () -> at + ": " + addedMag);
            }
        }
    }

    @Test
    void theTimeOfNightIsThatOfTheSitesClocks() {
        NightSky sky = sky(Trips.DARK_NIGHT);
        Limits.TimeOfNight time = new Limits.TimeOfNight(LocalTime.of(23, 0), LocalTime.of(1, 0));
        Wish wish = limited(Trips.pointed("late", SOUTH, SkyKind.ANY, new Wish.Tone.Free()),
                new Limits(Between.ANY,
                Between.ANY, Optional.empty(), Between.ANY, Optional.of(time), Between.ANY, Between.ANY,
                Between.ANY));
        BitSet holds = holds(new Requirement.ByTheClock(time, Optional.of(time)), wish, sky);
        int from = sky.clock().minuteOf(Trips.DARK_NIGHT.atTime(23, 0).atZone(Places.MID_NORTH.zone())
                .toInstant());
        assertEquals(from, holds.nextSetBit(0));
        assertEquals(from + 120, holds.length() - 1);
        assertEquals(121, holds.cardinality());
    }

    /**
     * The Moon's disc is half a degree wide (mean, 31.1′): a frame is free of it when its centre is a quarter
     * outside.
     */
    @Test
    void theMoonStaysOutsideByItsRim() {
        NightSky sky = sky(Trips.MOON_NIGHT);
        int minute = sky.clock().minuteOf(Trips.MOON_NIGHT.atTime(23, 0).atZone(Places.MID_NORTH.zone())
                .toInstant());
        Direction moon = sky.position(Body.MOON, minute).apparentDirection();
        double halfFrameDeg = Math.toDegrees(Math.atan(40 / 120.0));
        for (double outsideDeg : new double[] {0.3, 0.45, 0.55, 0.9}) {
            Direction aim = Direction.ofDegrees(moon.azimuth().degrees(),
                    moon.altitude().degrees()
                    - Math.toDegrees(Math.atan((40 + 120 * Math.tan(Math.toRadians(outsideDeg)))
                            / 120.0)));
            Wish wish = Trips.pointed("beside", aim, SkyKind.ANY, new Wish.Tone.Free());
            Aiming aiming = new Aiming(wish.aim(), sky, Trips.CAMERA);
            assertEquals(outsideDeg > 0.5, FrameEdge.moonOutsideDeg(sky, aiming.framing(minute), minute) >= 0,
                    () -> outsideDeg + "° outside " + halfFrameDeg);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, 12, 40})
    void anArcIsCountedBySiderealTime(double arcDeg) {
        Wish wish = limited(Trips.pointed("arc", SOUTH, SkyKind.ANY, new Wish.Tone.Free()),
                new Limits(Between.ANY,
                Between.ANY, Optional.empty(), Between.ANY, Optional.empty(), Between.ANY, Between.ANY,
                new Between(OptionalDouble.empty(), OptionalDouble.of(arcDeg))));
        NightSky sky = sky(Trips.DARK_NIGHT);
        DurationLimits limits = new DurationLimits(wish, sky, new Aiming(wish.aim(), sky, Trips.CAMERA));
        Bounds left = limits.byTurn(new Bounds(1, 600, DurationLimit.EXPOSURE, DurationLimit.EXPOSURE), 0, 1);
        assertEquals((int) Math.floor(arcDeg / 360 * 86_164.1 / 60), left.mostMin()); // sidereal day in s
        assertEquals(DurationLimit.ARC, left.mostBy());
    }

    /** Half of an even light made before it is dark is a share of 50 %. */
    @Test
    void theShareOfTwilightIsInPerCent() {
        double[] even = new double[121];
        for (int minute = 0; minute < even.length; minute++) {
            even[minute] = minute;
        }
        MinuteProgress made = new MinuteProgress(0, even);
        MinuteRun dark = new MinuteRun(60, 120);
        assertTrue(new TwilightShare(share(49, 51), dark).suits(0, 120, made));
        assertFalse(new TwilightShare(share(51, 100), dark).suits(0, 120, made));
        assertFalse(new TwilightShare(share(0, 49), dark).suits(0, 120, made));
    }

    private static Limits share(double least, double most) {
        return new Limits(Between.ANY, Between.ANY, Optional.empty(), Between.ANY, Optional.empty(),
                Between.ANY, Between.of(least, most), Between.ANY);
    }
}
