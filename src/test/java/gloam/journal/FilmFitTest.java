package gloam.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.exposure.ExposureEngine;
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

    private static final FilmStock FILM = Films.print(640, Reciprocity.power(1.3, 1));

    /** Time to the mid-tone by the published film in a light that it meters at 300 s. */
    private static final double PUBLISHED_S = Math.pow(300, 1.3);

    @Test
    void withoutSheetsTheFilmIsThePublishedOne() {
        FilmFit fit = FilmFit.of(FILM, List.of());
        assertSame(FILM, fit.film());
        assertEquals(0, fit.posterior().speedOffsetStops().mean(), 1e-9);
        // the prior's own standard deviation, the grid reaching four of them either way
        assertEquals(0.5, fit.posterior().speedOffsetStops().sd(), 0.002);
        // mean of a log-normal: 0.3 exp(0.35²/2); the cut at an exponent of 2 takes a three-thousandth part
        assertEquals(1 + 0.3 * Math.exp(0.35 * 0.35 / 2), fit.posterior().exponent().mean(), 0.002);
        assertEquals(0, fit.posterior().correlation(), 0.01);
    }

    @Test
    void darkSheetsMakeTheFilmSlowerAndItsNameTellsIt() {
        FilmFit fit = FilmFit.of(FILM, sheets(ToneWord.VERY_DARK, 4));
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
        FilmFit fit = FilmFit.of(FILM, sheets(ToneWord.DARK, 6));
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
        Posterior blank = FilmFit.of(FILM, sheets(ToneWord.BLACK, 1)).posterior();
        Posterior expected = FilmFit.of(FILM,
                List.of(sheet(1, PUBLISHED_S / 200, Sheets.judged(ToneWord.BLACK)))).posterior();
        assertTrue(blank.speedOffsetStops().mean() > 0.3, "a blank sheet where a mid-tone was published");
        // seven stops below the mid-tone black is what was to be expected, and tells next to nothing
        assertEquals(0, expected.speedOffsetStops().mean(), 0.01);
        assertEquals(0.5, expected.speedOffsetStops().sd(), 0.01);
    }

    @Test
    void spoiledAndUnjudgedSheetsAreLeftOutWithTheReason() {
        Outcome spoiled = new Outcome(Optional.of(new Verdict.InWords(ToneWord.WHITE)),
                OptionalDouble.empty(), Optional.of(false), List.of(Spoiler.LIGHT_LEAK, Spoiler.DEW));
        Outcome unknown = new Outcome(Optional.empty(), OptionalDouble.empty(), Optional.empty(), List.of());
        FilmFit fit = FilmFit.of(FILM,
                List.of(sheet(1, PUBLISHED_S, spoiled), sheet(2, PUBLISHED_S, unknown)));
        assertEquals(List.of(new FilmFit.LeftOut("1", "spoiled by light leak, dew"),
                new FilmFit.LeftOut("2", "not judged yet")), fit.leftOut());
        assertSame(FILM, fit.film());
    }

    @Test
    void aWrongNoteBendsLittleAndIsNamed() {
        List<Entry> sheets = new ArrayList<>(sheets(ToneWord.MIDDLE, 6));
        double before = FilmFit.of(FILM, sheets).posterior().speedOffsetStops().mean();
        sheets.add(sheet(7, PUBLISHED_S / 16, Sheets.judged(ToneWord.WHITE)));
        FilmFit fit = FilmFit.of(FILM, sheets);
        assertEquals(1, fit.strayNotes().size());
        assertEquals("7", fit.strayNotes().get(0).id());
        assertEquals("sky tone", fit.strayNotes().get(0).what());
        // nineteen in twenty of its weight is gone
        assertEquals(before, fit.posterior().speedOffsetStops().mean(), 0.05);
    }

    @Test
    void theFaintestStarTellsTheSpeed() {
        double limitMag = publishedLimitMag();
        double fainter = speedWithFaintest(limitMag + 0.7);
        double brighter = speedWithFaintest(limitMag - 0.7);
        assertTrue(brighter - fainter > 0.2, "a film that shows only bright stars is slower: " + brighter
                + ", " + fainter);
    }

    @Test
    void aLawWithoutFailureKeepsItsExponent() {
        FilmStock digital = Films.print(640, Reciprocity.none());
        FilmFit fit = FilmFit.of(digital,
                List.of(Sheets.steady("1", digital, 300, 300, Sheets.judged(ToneWord.DARK))));
        assertEquals(1, fit.posterior().exponent().mean(), 1e-9);
        assertEquals(0, fit.posterior().exponent().sd(), 1e-9);
        assertEquals(0, fit.posterior().correlation());
        assertTrue(fit.film().speedOffsetStops() > 0.1);
    }

    private static double publishedLimitMag() {
        Exposed exposed = sheet(1, PUBLISHED_S / 8, Sheets.judged(ToneWord.BLACK)).exposed();
        return TrailLimit.magnitude(new TrailLimit.Circumstances(FILM, exposed.lens(), exposed.fNumber(),
                exposed.openS(),
                1 / 8.0, exposed.middleLx(), exposed.stars().imageSpeedMmS(), exposed.stars().lossMag()));
    }

    private static double speedWithFaintest(double magnitude) {
        Outcome outcome = new Outcome(Optional.empty(), OptionalDouble.of(magnitude), Optional.empty(),
                List.of());
        return FilmFit.of(FILM, List.of(sheet(1, PUBLISHED_S / 8, outcome))).posterior().speedOffsetStops()
                .mean();
    }

    private static List<Entry> sheets(ToneWord word, int count) {
        List<Entry> sheets = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            sheets.add(sheet(i, PUBLISHED_S, Sheets.judged(word)));
        }
        return sheets;
    }

    private static Entry sheet(int id, double openS, Outcome outcome) {
        return Sheets.steady(String.valueOf(id), FILM, 300, openS, outcome);
    }
}
