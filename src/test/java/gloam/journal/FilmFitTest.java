package gloam.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.exposure.ExposureEngine;
import gloam.exposure.ExposedSheet;
import gloam.exposure.TrailLimit;
import gloam.film.FilmStock;
import gloam.film.Films;
import gloam.film.FittedReciprocity;
import gloam.film.Reciprocity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class FilmFitTest {

    static final FilmStock FILM = Films.print(640, Reciprocity.power(1.3, 1));

    /** Time to the mid-tone by the published film in a light that it meters at 300 s. */
    static final double PUBLISHED_S = Math.pow(300, 1.3);

    @Test
    void withoutSheetsTheFilmIsThePublishedOne() {
        FilmFit fit = Sheets.fit(FILM, List.of());
        assertSame(FILM, fit.film());
        assertEquals(0, fit.posterior().speedOffsetStops().mean(), 1e-4);
        // the film's own 0.3 and, of variance twice its scale's, a t distribution of four degrees of freedom
        assertEquals(Math.sqrt(0.3 * 0.3 + 2 * 0.35 * 0.35), fit.prior().speedOffsetStops().sd(), 0.03);
        // the published law is what is to be expected
        assertEquals(1.3, fit.posterior().exponent().mean(), 0.002);
        assertEquals(0, fit.posterior().correlation(), 0.01);
        Situation.typical(fit).forEach(light -> assertEquals(light.publishedS(), light.fittedS()));
    }

    @Test
    void darkSheetsMakeTheFilmSlowerAndItsNameTellsIt() {
        FilmFit fit = Sheets.fit(FILM, sheets(ToneWord.VERY_DARK, 4));
        assertTrue(fit.posterior().speedOffsetStops().mean() > 0.2);
        assertTrue(fit.posterior().exponent().mean() > 1.32);
        assertEquals("test print", fit.film().name());
        assertEquals(4, fit.film().fittedToSheets());
        assertEquals(fit.posterior().speedOffsetStops().mean(), fit.film().speedOffsetStops(), 1e-12);
        // one tone alone cannot tell a slow film from a steep one
        assertTrue(fit.posterior().correlation() < -0.3);
        assertEquals(300, fit.coveredToS(), 1e-6);
    }

    /** The fitted film's own doubt, to first order, against the spread over all films of the grid. */
    @Test
    void theFittedFilmKnowsHowWellItIsKnown() {
        FilmFit fit = Sheets.fit(FILM, sheets(ToneWord.DARK, 6));
        for (double publishedMeteredS : new double[] {30, 300, 1500}) {
            double gridStops = fit.posterior()
                    .estimate(fit.posterior().grid().log2CorrectedS(publishedMeteredS)).sd();
            double meteredS = publishedMeteredS * fit.film().midToneLxS() / FILM.midToneLxS();
            // second order in a doubt of half a stop and a third of the failure
            assertEquals(gridStops, ((FittedReciprocity) fit.film().reciprocity()).doubtStops(meteredS),
                    0.05 * gridStops);
        }
        assertTrue(ExposureEngine.spreadStops(fit.film(), 300) < ExposureEngine.spreadStops(FILM, 300));
    }

    @Test
    void aBlankSheetIsABound() {
        Posterior blank = Sheets.fit(FILM, sheets(ToneWord.BLACK, 1)).posterior();
        Posterior expected = Sheets.fit(FILM,
                List.of(sheet(1, PUBLISHED_S / 200, Sheets.judged(ToneWord.BLACK)))).posterior();
        assertTrue(blank.speedOffsetStops().mean() > 0.3, "a blank sheet where a mid-tone was published");
        // seven stops below the mid-tone black is what was to be expected, and tells next to nothing
        Estimate before = Sheets.fit(FILM, List.of()).prior().speedOffsetStops();
        assertEquals(0, expected.speedOffsetStops().mean(), 0.03);
        assertEquals(before.sd(), expected.speedOffsetStops().sd(), 0.03);
    }

    @Test
    void aSheetThatTellsNothingLeavesTheFilmAsItWas() {
        Entry blank = Sheets.steady("1", FILM, 700_000, 3600, Sheets.judged(ToneWord.BLACK));
        FilmFit fit = Sheets.fit(FILM, List.of(blank));
        assertEquals(0, fit.informative());
        assertSame(FILM, fit.film());
        assertEquals(FILM.reciprocity().coveredToS(), fit.coveredToS());
        List<Entry> others = new ArrayList<>(sheets(ToneWord.DARK, 3));
        others.add(blank);
        // trusted only as far as sheets have shown something
        assertEquals(300, Sheets.fit(FILM, others).coveredToS(), 1e-6);
    }

    /**
     * Sheets of one night share the error of its light, so that they teach less than those of as many nights.
     */
    @Test
    void fourSheetsOfOneNightTeachLessThanFourNights() {
        List<Entry> one = sheets(ToneWord.MIDDLE, 4);
        List<Entry> four = new ArrayList<>();
        one.forEach(sheet -> four.add(Sheets.moved(sheet, "", four.size())));
        double spread = spreadStops(one);
        assertTrue(spreadStops(four) < 0.85 * spread, spreadStops(four) + " and " + spread);
    }

    @Test
    void packsHaveSpeedsOfTheirOwnWithinOneLaw() {
        List<Entry> sheets = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            sheets.add(Sheets.moved(sheet(i, PUBLISHED_S, Sheets.judged(i % 2 == 0 ? ToneWord.VERY_DARK
                    : ToneWord.MIDDLE)), i % 2 == 0 ? "old" : "new", i / 2));
        }
        FilmFit old = FilmFit.of(FILM, sheets, Optional.of("Old"), Optional.empty());
        FilmFit fresh = FilmFit.of(FILM, sheets, Optional.of("new"), Optional.empty());
        FilmFit unopened = Sheets.fit(FILM, sheets);
        assertTrue(old.posterior().speedOffsetStops().mean() > fresh.posterior().speedOffsetStops().mean()
                + 0.8);
        assertTrue(unopened.posterior().speedOffsetStops().sd()
                > fresh.posterior().speedOffsetStops().sd() + 0.05);
        assertEquals(Optional.empty(), unopened.pack());
        // the same packs, whichever is asked for: Laplace's approximation is less good in the tails of the t
        // distribution, where packs so far apart lie
        for (FilmFit fit : List.of(old, fresh, unopened)) {
            assertEquals(old.posterior().speedOffsetStops().mean(),
                    fit.packs().get(0).speedOffsetStops().mean(), 0.15);
            assertEquals(old.posterior().speedOffsetStops().sd(), fit.packs().get(0).speedOffsetStops().sd(),
                    0.1);
            assertTrue(fit.warnings().stream().anyMatch(FitWarning.PacksApart.class::isInstance));
        }
    }

    /** Ten degrees colder and 0.3 stop darker in every night. */
    @Test
    void coldShowsOnceThereAreSheetsEnough() {
        List<Entry> sheets = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            Entry sheet = Sheets.moved(sheet(i, PUBLISHED_S, Sheets.measured(i % 2 == 0 ? 0 : -0.4, 0.2)), "",
                    i / 2);
            sheets.add(Sheets.at(i % 2 == 0 ? 12 : 2, sheet));
        }
        assertEquals(Optional.empty(), Sheets.fit(FILM, sheets.subList(0, 7)).coldStopsPerDegree());
        // 0.4 stop of tone at an exponent of 1.3 in ten degrees
        assertEquals(0.03, Sheets.fit(FILM, sheets).coldStopsPerDegree().orElseThrow().mean(), 0.012);
    }

    private static double spreadStops(List<Entry> sheets) {
        return SteadyLight.of(Sheets.fit(FILM, sheets).posterior(), 300, 0).times().spreadStops();
    }

    @Test
    void theFaintestStarTellsTheSpeed() {
        double limitMag = publishedLimitMag();
        double fainter = speedWithFaintest(limitMag + 0.7);
        double brighter = speedWithFaintest(limitMag - 0.7);
        assertTrue(fainter < -0.1, "a film that shows faint stars is fast: " + fainter);
        // bright ones are a lower bound and say next to nothing: fainter ones may have been passed over
        assertEquals(0, brighter, 0.12);
    }

    @Test
    void aLawWithoutFailureKeepsItsExponent() {
        FilmStock digital = Films.print(640, Reciprocity.none());
        FilmFit fit = Sheets.fit(digital,
                List.of(Sheets.steady("1", digital, 300, 300, Sheets.judged(ToneWord.DARK))));
        assertEquals(1, fit.posterior().exponent().mean(), 1e-9);
        assertEquals(0, fit.posterior().exponent().sd(), 1e-9);
        assertEquals(0, fit.posterior().correlation());
        assertTrue(fit.film().speedOffsetStops() > 0.1);
    }

    private static double publishedLimitMag() {
        Exposed exposed = sheet(1, PUBLISHED_S / 8, Sheets.judged(ToneWord.BLACK)).exposed();
        return TrailLimit.magnitude(new TrailLimit.Passing(new ExposedSheet(FILM, exposed.lens(),
                exposed.fNumber(), exposed.openS(), 1 / 8.0, exposed.middleLx()),
                exposed.stars().imageSpeedMmS(), exposed.stars().lossMag()));
    }

    private static double speedWithFaintest(double magnitude) {
        Outcome outcome = new Outcome(Optional.empty(), OptionalDouble.of(magnitude), Optional.empty(),
                List.of());
        return Sheets.fit(FILM, List.of(sheet(1, PUBLISHED_S / 8, outcome))).posterior().speedOffsetStops()
                .mean();
    }

    static List<Entry> sheets(ToneWord word, int count) {
        List<Entry> sheets = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            sheets.add(sheet(i, PUBLISHED_S, Sheets.judged(word)));
        }
        return sheets;
    }

    static Entry sheet(int id, double openS, Outcome outcome) {
        return Sheets.steady(String.valueOf(id), FILM, 300, openS, outcome);
    }
}
