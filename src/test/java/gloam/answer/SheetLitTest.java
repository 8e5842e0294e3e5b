package gloam.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gloam.answer.SheetLit.LastWord;
import gloam.answer.SheetLit.Set;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.gear.Projection;
import gloam.gear.Site;
import gloam.gear.Vignetting;
import gloam.journal.Exposed;
import gloam.journal.Opening;
import gloam.journal.Place;
import gloam.journal.Sheets;
import gloam.light.SkyBrightness;
import gloam.support.Places;
import gloam.support.StandingSky;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Where the light of a sheet comes from: measured, computed, or the last word on it. */
class SheetLitTest {

    private static final StandingSky DARK = new StandingSky(Direction.ofDegrees(0, -40),
            Direction.ofDegrees(180, -40), 384_400, Angle.ofDegrees(90));
    private static final Site SITE = Places.at(50, 10, 0);
    private static final Interval OPEN =
            Interval.lasting(Instant.parse("2027-02-08T20:00:00Z"), Duration.ofHours(1));
    private static final Interval LATER =
            Interval.lasting(Instant.parse("2027-02-08T22:00:00Z"), Duration.ofHours(2));
    private static final Optional<Direction> POLE = Optional.of(Direction.ofDegrees(0, 41));
    private static final Optional<Place> MEADOW = Sheets.exposed("a film", List.of(light(OPEN, 1))).place();

    private static Lens lens(double fNumber) {
        return new Lens(120, List.of(FNumber.exact(fNumber)), 0.9, Double.POSITIVE_INFINITY, 40, 0,
                Projection.RECTILINEAR, Vignetting.NONE);
    }

    private static Opening light(Interval open, double... lx) {
        return new Opening(open, Arrays.stream(lx).boxed().toList());
    }

    private static Ephemeris none() {
        throw new AssertionError("light that is known needs no ephemeris");
    }

    private static SheetLit known(Optional<Direction> aim, Lens lens, Interval... open) {
        return new SheetLit(SheetLitTest::none, Optional.empty(), MEADOW,
                Set.alike(List.of(open), aim, lens));
    }

    private static SheetLit computed(Optional<Direction> aim, Lens lens) {
        return computed(SITE, aim, lens);
    }

    private static SheetLit computed(Site site, Optional<Direction> aim, Lens lens) {
        return new SheetLit(() -> DARK, Optional.of(site), Optional.of(Place.of(site)),
                Set.alike(List.of(OPEN), aim, lens));
    }

    private static Exposed before(boolean measured, Opening... openings) {
        Exposed one = Sheets.exposed("a film", List.of(openings));
        return new Exposed(one.film(), "", one.place(), one.aim(), one.lens(), one.openings(), measured,
                one.stars(),
                OptionalDouble.empty());
    }

    private static Optional<LastWord> said(boolean measured, Opening... openings) {
        return Optional.of(new LastWord(before(measured, openings), before(measured, openings), false));
    }

    private static List<Double> lx(List<Opening> openings) {
        return openings.stream().map(Opening::middleLx).toList();
    }

    /** A magnitude is 10^0.4 times the light, twice the f-number a quarter of it. */
    @Test
    void aMeasuredSkyLightsEveryOpeningAlike() {
        List<Opening> at21 = known(POLE, lens(8), OPEN, LATER)
                .openings(Optional.of(SkyBrightness.ofMagArcsec2(21)), said(true, light(OPEN, 5)));
        assertEquals(List.of(OPEN, LATER), at21.stream().map(Opening::open).toList());
        assertEquals(at21.get(0).illuminancesLx(), at21.get(1).illuminancesLx());
        assertEquals(1, at21.get(0).illuminancesLx().size());
        double at20Lx = known(POLE, lens(16), OPEN).openings(Optional.of(SkyBrightness.ofMagArcsec2(20)),
                Optional.empty()).get(0).middleLx();
        assertEquals(Math.pow(10, 0.4) / 4, at20Lx / at21.get(0).middleLx(), 1e-9);
    }

    @Test
    void lightMeasuredBeforeHoldsForTheSameTimes() {
        Opening rising = light(OPEN, 1, 2, 4);
        assertEquals(List.of(rising), known(Optional.empty(), lens(8), OPEN)
                .openings(Optional.empty(), said(true, rising)));
        assertEquals(List.of(light(OPEN, 0.25, 0.5, 1)), known(Optional.empty(), lens(16), OPEN)
                .openings(Optional.empty(), said(true, rising)));
    }

    @Test
    void lightMeasuredBeforeIsSteadyAtOtherTimes() {
        assertEquals(List.of(light(LATER, 2)), known(POLE, lens(8), LATER)
                .openings(Optional.empty(), said(true, light(OPEN, 1, 2, 4))));
    }

    @Test
    void lightComputedBeforeHoldsForTheSameAimAndTimes() {
        assertEquals(List.of(light(OPEN, 0.25, 0.5, 1)), known(POLE, lens(16), OPEN)
                .openings(Optional.empty(), said(false, light(OPEN, 1, 2, 4))));
    }

    @Test
    void lightComputedBeforeHoldsForNothingElse() {
        Optional<LastWord> said = said(false, light(OPEN, 1));
        assertThrows(BadInput.class, () -> known(POLE, lens(8), LATER).openings(Optional.empty(), said));
        assertThrows(BadInput.class, () -> known(Optional.of(Direction.ofDegrees(1, 41)), lens(8), OPEN)
                .openings(Optional.empty(), said));
        assertThrows(BadInput.class, () -> known(POLE, lens(8), OPEN)
                .openings(Optional.empty(), Optional.empty()));
        assertThrows(BadInput.class, () -> computed(Optional.empty(), lens(8))
                .openings(Optional.empty(), said));
    }

    /** Light measured and then taken back lights nothing, however alike the sheets. */
    @Test
    void aMeasurementTakenBackIsNotLightComputed() {
        LastWord unsaid = new LastWord(before(true, light(OPEN, 1)), before(false, light(OPEN, 1)), false);
        assertThrows(BadInput.class, () -> known(POLE, lens(8), OPEN)
                .openings(Optional.empty(), Optional.of(unsaid)));
    }

    @Test
    void whereSiteOrAimAreTakenBackOnlyMeasuredLightHolds() {
        Exposed steady = before(true, light(OPEN, 1));
        Exposed reckoned = before(false, light(OPEN, 1));
        assertEquals(List.of(1.0), lx(known(POLE, lens(8), OPEN)
                .openings(Optional.empty(), Optional.of(new LastWord(steady, steady, true)))));
        assertThrows(BadInput.class, () -> computed(POLE, lens(8))
                .openings(Optional.empty(), Optional.of(new LastWord(reckoned, reckoned, true))));
    }

    /**
     * A city's zenith of 16 mag/arcsec² that stays so but for a hundredth; the site counts though the last
     * word was of the same aim and times.
     */
    @Test
    void aSiteInFullHasItsLightComputed() {
        List<Opening> measured = known(POLE, lens(8), OPEN)
                .openings(Optional.of(SkyBrightness.ofMagArcsec2(16)), Optional.empty());
        List<Opening> computed = computed(Places.inACity(50, 10, 0), Optional.of(Direction.ZENITH), lens(8))
                .openings(Optional.empty(), Optional.empty());
        assertEquals(measured.get(0).middleLx(), computed.get(0).middleLx(),
                0.01 * measured.get(0).middleLx());
        assertEquals(measured.get(0).illuminancesLx().size(), computed.get(0).illuminancesLx().size());
        double again = computed(POLE, lens(8)).openings(Optional.empty(), said(false, light(OPEN, 1))).get(0)
                .middleLx();
        assertEquals(0, again, 0.01, "no light of 1 lx");
    }

    /** The zenith of 50° N has that declination; an image there runs 120 mm · 7.2921e-5/s · cos 50°. */
    @Test
    void starsAreThoseOfTheSite() {
        Exposed.Stars stars = computed(Optional.of(Direction.ZENITH), lens(8))
                .stars(said(false, light(OPEN, 1)));
        assertEquals(120 * 7.2921e-5 * Math.cos(Math.toRadians(50)), stars.imageSpeedMmS(), 1e-7);
        assertEquals(0.2, stars.lossMag(), 1e-3); // one air mass
    }

    @Test
    void starsOfTheLastWordHoldForTheSameLensAimAndPlace() {
        Exposed.Stars kept = new Exposed.Stars(0.00875, 0.3);
        Optional<LastWord> said = said(false, light(OPEN, 1));
        assertEquals(kept, known(POLE, lens(8), OPEN).stars(said));
        SheetLit elsewhere = new SheetLit(SheetLitTest::none, Optional.empty(),
                Optional.of(new Place("Hill", Angle.ZERO, MEADOW.orElseThrow().zone())),
                Set.alike(List.of(OPEN), POLE, lens(8)));
        assertEquals(120 * 7.2921e-5 * Math.cos(Math.toRadians(49)), elsewhere.stars(said).imageSpeedMmS(),
                1e-7);
        assertEquals(0.3, elsewhere.stars(said).lossMag(), 1e-9);
        assertEquals(0, known(POLE, lens(16), OPEN).stars(said).imageSpeedMmS(), 1e-7,
                "the pole stands still");
        assertEquals(120 * 7.2921e-5, known(Optional.of(Direction.ofDegrees(180, 49)), lens(8), OPEN)
                .stars(said).imageSpeedMmS(), 1e-7);
    }

    /** Nothing is known: stars of the equator. */
    @Test
    void withoutPlaceAndLastWordStarsRunFastest() {
        SheetLit lit = new SheetLit(SheetLitTest::none, Optional.empty(), Optional.empty(),
                Set.alike(List.of(OPEN), Optional.empty(), lens(8)));
        assertEquals(120 * 7.2921e-5, lit.stars(Optional.empty()).imageSpeedMmS(), 1e-7);
    }
}
