package gloam.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.SkyPosition;
import gloam.field.Forecast;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What narrows a wish, weather and a trip that has begun. */
class LimitsTest {

    private static final Direction SOUTH = Direction.ofDegrees(180, 40);
    /** Half a minute at either end, and a minute for limits that are found by five-minute steps. */
    private static final Duration NEAR = Duration.ofSeconds(90);

    private final AnalyticEphemeris ephemeris = new AnalyticEphemeris();

    private static Between between(double least, double most) {
        return new Between(OptionalDouble.of(least), OptionalDouble.of(most));
    }

    private static Wish limited(Wish wish, Limits limits) {
        return new Wish(wish.name(), wish.aim(), wish.sky(), wish.tone(), wish.records(), wish.trail(),
                wish.shortest(),
                wish.longest(), wish.fNumbers(), wish.worth(), wish.repeat(), wish.film(), limits);
    }

    private Plan plan(Trip trip) {
        return new Planner(ephemeris, Trips.stars()).plan(trip);
    }

    private Plan.Window window(LocalDate night, Wish wish) {
        Plan plan = plan(Trips.trip(List.of(Places.MID_NORTH), night, 1, 1, List.of(wish)));
        assertEquals(1, plan.sheetsUsed(), () -> plan.nights().get(0).refused().toString());
        return plan.nights().get(0).windows().get(0);
    }

    @Test
    void theMoonKeepsItsHeightAndItsSide() {
        Wish wish = limited(Trips.pointed("moonlit", Direction.ofDegrees(320, 40), SkyKind.MOONLIT,
                new Wish.Tone.Free()),
                new Limits(between(20, 60), between(50, 100), Optional.of(Limits.Side.BEHIND), Between.ANY,
                Optional.empty(),
                        Between.ANY, Between.ANY, Between.ANY));
        Plan.Window window = window(Trips.MOON_NIGHT, wish);
        for (Instant at : List.of(window.open().start().plus(NEAR), window.open().endExclusive()
                .minus(NEAR))) {
            double altitudeDeg = moon(at).apparentAltitude().degrees();
            assertTrue(altitudeDeg >= 20 && altitudeDeg <= 60, () -> at + " " + altitudeDeg);
        }
        double aroundDeg = moon(window.open().middle()).azimuth().degrees() - 320;
        assertTrue(Math.abs(Math.IEEEremainder(aroundDeg - 180, 360)) <= 45.5, () -> "Moon " + aroundDeg
                + "° from the aim");
    }

    private SkyPosition moon(Instant at) {
        return ephemeris.position(Body.MOON, Places.MID_NORTH, at);
    }

    /** Azimuths run clockwise: what is 90° further round stands at the right hand. */
    @Test
    void theQuartersLieAroundTheAim() {
        assertEquals(Limits.Side.AHEAD, Limits.Side.at(44));
        assertEquals(Limits.Side.AHEAD, Limits.Side.at(-44));
        assertEquals(Limits.Side.RIGHT, Limits.Side.at(46));
        assertEquals(Limits.Side.RIGHT, Limits.Side.at(-226));
        assertEquals(Limits.Side.BEHIND, Limits.Side.at(136));
        assertEquals(Limits.Side.BEHIND, Limits.Side.at(-136));
        assertEquals(Limits.Side.LEFT, Limits.Side.at(-46));
        assertEquals(Limits.Side.LEFT, Limits.Side.at(314));
        assertEquals(5, Limits.Side.LEFT.marginDeg(-130), 1e-9);
        assertEquals(-5, Limits.Side.RIGHT.marginDeg(40), 1e-9);
    }

    @Test
    void theClockIsKept() {
        Wish wish = limited(Trips.pointed("late", SOUTH, SkyKind.DARK, new Wish.Tone.Free()),
                new Limits(Between.ANY, Between.ANY, Optional.empty(), Between.ANY,
                Optional.of(new Limits.TimeOfNight(LocalTime.of(23, 40), LocalTime.of(0, 30))), Between.ANY,
                Between.ANY, Between.ANY));
        Interval open = window(Trips.DARK_NIGHT, wish).open();
        LocalTime from = open.start().atZone(Places.MID_NORTH.zone()).toLocalTime();
        LocalTime to = open.endExclusive().atZone(Places.MID_NORTH.zone()).toLocalTime();
        assertFalse(from.isBefore(LocalTime.of(23, 40)) && from.isAfter(LocalTime.of(0, 30)), from::toString);
        assertFalse(to.isAfter(LocalTime.of(0, 30)) && to.isBefore(LocalTime.of(23, 40)), to::toString);
    }

    /** The Earth turns by 360° in 86 164 s (sidereal day). */
    @Test
    void theWheelTurnsAsFarAsWanted() {
        Wish wish = limited(Trips.wish("wheel", new Aim.Pole(gloam.units.Angle.ZERO), SkyKind.DARK,
                new Wish.Tone.Free(),
                new Wish.Records.Nothing()),
                new Limits(Between.ANY, Between.ANY, Optional.empty(), Between.ANY, Optional.empty(),
                Between.ANY, Between.ANY, between(10, 12)));
        Plan.Window window = window(Trips.DARK_NIGHT, wish);
        double arcDeg = 360 * window.open().seconds() / 86164;
        assertTrue(arcDeg >= 10 && arcDeg <= 12, () -> arcDeg + "°");
        assertEquals(Places.MID_NORTH.latitude().degrees(), window.aim().altitude().degrees(), 0.1);
                // refraction 1′
    }

    @Test
    void aBlendHasItsMinutesOfTwilightAndItsDepthOfSun() {
        Wish wish = limited(Trips.pointed("blend", Direction.ofDegrees(250, 30), SkyKind.DUSK,
                new Wish.Tone.Free()),
                new Limits(Between.ANY, Between.ANY, Optional.empty(), between(8, 14), Optional.empty(),
                between(20, 30),
                        Between.ANY, Between.ANY));
        Interval open = window(Trips.DARK_NIGHT, wish).open();
        double depthDeg = -sunDeg(open.start());
        assertTrue(depthDeg > 7.7 && depthDeg < 14.3, () -> depthDeg + "°");
                // a minute moves the Sun by up to 0.25°
        long twilightMin = 0;
        for (Instant at = open.start().plusSeconds(30); at.isBefore(open.endExclusive());
                at = at.plusSeconds(60)) {
            twilightMin += sunDeg(at) > -18 ? 1 : 0;
        }
        long minutes = twilightMin;
        assertTrue(minutes >= 19 && minutes <= 31, () -> minutes + " min");
                // a minute for the end of twilight
    }

    private double sunDeg(Instant at) {
        return ephemeris.position(Body.SUN, Places.MID_NORTH, at).airlessAltitude().degrees();
    }

    /** Of two nights alike the planner takes the one for which clear sky is forecast, and says the chance. */
    @Test
    void theClearerNightIsTaken() {
        Wish wish = Trips.pointed("dark", SOUTH, SkyKind.DARK, new Wish.Tone.Free());
        Trip plain = Trips.trip(List.of(Places.MID_NORTH), Trips.DARK_NIGHT, 2, 1, List.of(wish));
        Instant turn = Trips.DARK_NIGHT.plusDays(1).atTime(12, 0).atZone(Places.MID_NORTH.zone()).toInstant();
        Forecast forecast = new Forecast(List.of(row(turn.minusSeconds(86_400), 0.9),
                row(turn.minusSeconds(60), 0.9), row(turn, 0.05), row(turn.plusSeconds(86_400), 0.05)));
        Plan plan = plan(Trips.under(plain, Weather.of(Optional.of(forecast)), Optional.empty()));
        assertTrue(plan.nights().get(0).windows().isEmpty());
        Plan.Window window = plan.nights().get(1).windows().get(0);
        assertEquals(0.95, window.cloud().orElseThrow().clearChance(), 1e-9);
    }

    /**
     * Who opens under a doubtful sky can still close early: even cloud all night spoils no tone and cuts no
     * wheel short.
     */
    @Test
    void anEvenlyCloudyNightIsPlannedLikeAClearOne() {
        Wish dark = Trips.pointed("dark", SOUTH, SkyKind.DARK, new Wish.Tone.AtMost(-1));
        Wish grey = Trips.pointed("grey", SOUTH, SkyKind.DARK, new Wish.Tone.Near(-3));
        for (Wish wish : List.of(dark, grey)) {
            Trip plain = Trips.trip(List.of(Places.MID_NORTH), Trips.DARK_NIGHT, 1, 1, List.of(wish));
            Instant noon = Trips.DARK_NIGHT.atTime(11, 0).atZone(Places.MID_NORTH.zone()).toInstant();
            Trip cloudy = Trips.under(plain, Weather.of(Optional.of(new Forecast(List.of(row(noon, 0.3),
                    row(noon.plusSeconds(100_000), 0.3))))),
                    Optional.empty());
            Plan.Window clear = plan(plain).nights().get(0).windows().get(0);
            Plan.Window doubtful = plan(cloudy).nights().get(0).windows().get(0);
            if (wish == dark) {
                assertEquals(clear.open().lasts(), doubtful.open().lasts());
            }
            double within = 0.25; // what counts as the tone wanted
            assertEquals(clear.skyToneStops(), doubtful.skyToneStops(), within, wish.name());
            double step = 1 / 0.9 - 1; // a chance stands for what lies between it and nine tenths of it
            assertEquals(1, doubtful.score() / (0.7 / 0.5 * clear.score()), step,
                    () -> wish.name() + ": seven tenths clear against the half without a forecast");
        }
    }

    @Test
    void otherFilmsLeaveWeatherAndProgressAsTheyAre() {
        Wish wish = Trips.pointed("dark", SOUTH, SkyKind.DARK, new Wish.Tone.Free());
        Trip plain = Trips.trip(List.of(Places.MID_NORTH), Trips.DARK_NIGHT, 2, 2, List.of(wish));
        Instant now = Trips.DARK_NIGHT.atTime(20, 0).atZone(Places.MID_NORTH.zone()).toInstant();
        Trip begun = Trips.under(plain, Weather.of(Optional.of(new Forecast(List.of(row(now, 0.5),
                row(now.plusSeconds(3600), 0.5))))),
                Optional.of(new Trip.Begun(now, 1, List.of("dark"), plain.firstNight())));
        assertEquals(begun, begun.withFilms(UnaryOperator.identity()));
    }

    private static Forecast.Row row(Instant at, double cloud) {
        return new Forecast.Row(at, cloud, OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    @Test
    void theRestOfATripOpensNothingBeforeNow() {
        Wish once = Trips.pointed("once", SOUTH, SkyKind.DARK, new Wish.Tone.Free());
        Wish twice = Trips.repeated(Trips.pointed("twice", SOUTH, SkyKind.DARK, new Wish.Tone.Free()), 2,
                1);
        Instant now = Trips.DARK_NIGHT.plusDays(1).atTime(1, 13).atZone(Places.MID_NORTH.zone()).toInstant();
        Trip rest = Trips.trip(List.of(Places.MID_NORTH), Trips.DARK_NIGHT, 2, 4, List.of(once, twice))
                .rest(now).withSpent(2).without(List.of("once", "twice"));
        Plan plan = plan(rest);
        List<Plan.Window> windows = plan.nights().stream().flatMap(night -> night.windows().stream())
                .toList();
        assertEquals(List.of("twice"), windows.stream().map(window -> window.wish().name()).toList());
        assertEquals(3, windows.get(0).sheet());
        assertFalse(windows.get(0).open().start().isBefore(now));
    }
}
