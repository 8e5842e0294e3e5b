package gloam.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.answer.ExposureQuestion.TimeFor;
import gloam.answer.ExposureQuestion.ToneAfter;
import gloam.answer.ExposureQuestion.Unknown;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Event;
import gloam.ephemeris.Night;
import gloam.exposure.TrailLimit;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Site;
import gloam.gear.Vignetting;
import gloam.light.SkyBrightness;
import gloam.support.AnalyticEphemeris;
import gloam.support.Places;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The night of a sheet under a sky that changes, and what may be asked of it. */
class UsableNightTest {

    private static final AnalyticEphemeris EPHEMERIS = new AnalyticEphemeris();
    private static final Site SITE = Places.MID_NORTH;
    private static final Night NIGHT = Night.of(EPHEMERIS, SITE, LocalDate.of(2027, 2, 15));
    private static final Instant DARK_FROM = NIGHT.darkness().get(0).start();
    private static final Instant DARK_TO = NIGHT.darkness().get(0).endExclusive();
    private static final Instant SUNRISE = NIGHT.sunDown().get(0).endExclusive();
    private static final Duration HOUR = Duration.ofHours(1);

    private static ExposureQuestion question(KnownSky sky, OptionalDouble reflectance, Unknown unknown,
            Interval... earlier) {
        Lens lens = new Lens(120, List.of(FNumber.exact(8)), 0.9, Double.POSITIVE_INFINITY, 40, 0,
                Projection.RECTILINEAR, Vignetting.NONE);
        return new ExposureQuestion(Films.print(640, Reciprocity.none()), lens, Optional.empty(),
                List.of(sky),
                reflectance, List.of(earlier), TrailLimit.LEAST_DIFFERENCE_DENSITY, unknown);
    }

    private static KnownSky.Computed sky(Instant openAt, boolean steady) {
        return new KnownSky.Computed(SITE, Direction.ofDegrees(0, 44), openAt, steady);
    }

    private static UsableNight night(Instant openAt, Unknown unknown, Interval... earlier) {
        KnownSky.Computed sky = sky(openAt, false);
        return UsableNight.of(EPHEMERIS, question(sky, OptionalDouble.empty(), unknown, earlier), sky);
    }

    @Test
    void aToneMustBeReachedByTheEndOfDarkness() {
        Instant dusk = DARK_FROM.minus(Duration.ofMinutes(30));
        assertEquals(new Interval(dusk, DARK_TO), night(dusk, new TimeFor(0, 1)).shutter().available());
        Instant late = DARK_TO.minusSeconds(60);
        assertEquals(new Interval(late, DARK_TO), night(late, new TimeFor(0, 1)).shutter().available());
    }

    @Test
    void afterDarknessAToneMustBeReachedBySunrise() {
        Instant dawn = DARK_TO.plusSeconds(60);
        assertEquals(new Interval(dawn, SUNRISE), night(dawn, new TimeFor(0, 1)).shutter().available());
        assertEquals(new Interval(DARK_TO, SUNRISE), night(DARK_TO, new TimeFor(0, 1)).shutter().available());
    }

    @Test
    void aTimeMayRunIntoTheDawn() {
        Instant late = DARK_TO.minus(Duration.ofMinutes(30));
        assertEquals(Interval.lasting(late, HOUR), night(late, new ToneAfter(HOUR)).shutter().available());
    }

    /** In the polar night the Sun never rises, and darkness comes and goes. */
    @Test
    void inPolarNightTheNightsEndCloses() {
        Site polar = Places.POLAR;
        Night dark = Night.of(EPHEMERIS, polar, LocalDate.of(2027, 1, 10));
        Instant after = dark.darkness().get(dark.darkness().size() - 1).endExclusive().plusSeconds(60);
        assertTrue(after.isBefore(dark.span().endExclusive()), "twilight at noon");
        KnownSky.Computed sky = new KnownSky.Computed(polar, Direction.ofDegrees(0, 44), after, false);
        assertEquals(new Interval(after, dark.span().endExclusive()), UsableNight.of(EPHEMERIS,
                question(sky, OptionalDouble.empty(), new TimeFor(0, 1)), sky).shutter().available());
    }

    /** From the first opening on, the Moon's transit left out, which changes no light. */
    @Test
    void eventsOfTheSheetAreTold() {
        Event transit = NIGHT.events().stream().filter(event -> event.what() == Event.Kind.MOON_TRANSIT)
                .findFirst()
                .orElseThrow();
        Event moonset = NIGHT.events().stream().filter(event -> event.what() == Event.Kind.MOONSET)
                .findFirst()
                .orElseThrow();
        assertTrue(transit.at().isAfter(DARK_FROM.minus(HOUR)) && moonset.at().isBefore(DARK_TO),
                NIGHT.events()::toString);
        Interval before = Interval.lasting(DARK_FROM.minus(Duration.ofMinutes(30)), Duration.ofMinutes(10));
        UsableNight night = night(moonset.at().minus(HOUR), new ToneAfter(HOUR.multipliedBy(2)), before);
        assertEquals(List.of(before), night.shutter().earlier());
        assertEquals(List.of(new Event(DARK_FROM, Event.Kind.ASTRONOMICAL_DUSK), moonset), night.events());
        assertFalse(night(moonset.at().plusSeconds(1), new ToneAfter(HOUR)).events().contains(moonset));
    }

    @Test
    void anOpeningOfAnotherNightIsRefused() {
        Interval yesterday = Interval.lasting(DARK_FROM.minus(Duration.ofDays(1)), HOUR);
        assertThrows(BadInput.class, () -> night(DARK_FROM, new ToneAfter(HOUR), yesterday));
    }

    @Test
    void onlyAComputedSkyLightsTheGroundAndKnowsTheClock() {
        OptionalDouble sand = OptionalDouble.of(0.3);
        Interval before = Interval.lasting(DARK_FROM, HOUR);
        KnownSky measured = new KnownSky.Measured(SkyBrightness.ofMagArcsec2(21));
        Instant later = DARK_FROM.plus(HOUR.multipliedBy(2));
        assertThrows(BadInput.class, () -> question(measured, sand, new TimeFor(0, 1)));
        assertThrows(BadInput.class, () -> question(measured, OptionalDouble.empty(), new TimeFor(0, 1),
                before));
        assertThrows(BadInput.class, () -> question(sky(later, true), OptionalDouble.empty(),
                new TimeFor(0, 1), before));
        assertEquals(List.of(before), question(sky(later, false), sand, new TimeFor(0, 1), before).earlier());
        assertEquals(sand, question(sky(later, true), sand, new TimeFor(0, 1)).groundReflectance());
        assertThrows(BadInput.class, () -> question(sky(later, true), OptionalDouble.of(1.01),
                new TimeFor(0, 1)));
    }
}
