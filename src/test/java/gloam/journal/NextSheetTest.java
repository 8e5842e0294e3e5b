package gloam.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.film.FilmStock;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.gear.FNumber;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class NextSheetTest {

    private static final FilmStock FILM = Films.print(640, Reciprocity.power(1.3, 1));
    private static final Posterior PRIOR = Posterior.prior(new FilmGrid(FILM));

    @Test
    void theLikeliestIsNearThePublishedTimeAndTheWidestStopIsSurest() {
        NextSheet.Advice advice = new NextSheet(PRIOR, wanted(FNumber.series(8, 16), 0)).advice(1);
        assertEquals(FNumber.marked(8), advice.likeliest().fNumber());
        // 256 s metered at f/8; the scale's prior leans to longer times, by a third of a stop or so; steps of
        // a third
        assertEquals(0, Math.log(advice.likeliest().exposureS() / Math.pow(256, 1.3)) / Math.log(2), 0.7);
        assertFalse(advice.learnFirst());
    }

    @Test
    void aDarkerToneTakesLessTime() {
        double mid = new NextSheet(PRIOR, wanted(FNumber.series(8), 0)).likeliestS();
        double dark = new NextSheet(PRIOR, wanted(FNumber.series(8), -2)).likeliestS();
        assertEquals(4, mid / dark, 1e-6);
    }

    @Test
    void moreSheetsBracketMore() {
        List<NextSheet.BracketOfTimes> brackets = new NextSheet(PRIOR,
                wanted(FNumber.series(8), 0)).advice(4).brackets();
        assertEquals(List.of(2, 3, 4), brackets.stream().map(bracket -> bracket.exposuresS().size())
                .toList());
        for (NextSheet.BracketOfTimes bracket : brackets) {
            for (int i = 1; i < bracket.exposuresS().size(); i++) {
                assertEquals(2, bracket.exposuresS().get(i) / bracket.exposuresS().get(i - 1), 1e-9);
            }
        }
        assertTrue(brackets.get(1).rightChance() > brackets.get(0).rightChance() + 0.05);
        assertTrue(brackets.get(2).rightChance() > brackets.get(1).rightChance() + 0.02);
    }

    @Test
    void lookingInBetweenBeatsABracketOfTwo() {
        NextSheet.Advice advice = new NextSheet(PRIOR, wanted(FNumber.series(8), 0)).advice(2);
        assertTrue(Math.max(advice.likeliest().rightByTheSecond(), advice.telling().rightByTheSecond())
                >= advice.brackets().get(0).rightChance());
        assertTrue(advice.telling().spreadAfterStops() <= advice.likeliest().spreadAfterStops());
        assertTrue(advice.telling().spreadAfterStops() < 0.8 * advice.spreadStops());
    }

    /**
     * Law of total expectation: what a sheet is said to leave open is the mean over its verdicts of what each
     * would leave.
     */
    @Test
    void whatASheetWillTellIsTheMeanOverItsVerdicts() {
        NextSheet.Choice sheet = new NextSheet(PRIOR, wanted(FNumber.series(8), 0)).advice(2).likeliest();
        double[] log2Times = SteadyLight.of(PRIOR, 4 * 64, 0).log2Times();
        double[] tones = Arrays.stream(log2Times)
                .map(log2Time -> Math.log(sheet.exposureS()) / Math.log(2) - log2Time).toArray();
        double chances = 0;
        double variance = 0;
        for (ToneWord word : ToneWord.values()) {
            Evidence evidence = Evidence.of(word).blurred(TimeSpread.LIGHT_STOPS);
            double[] likelihoods = Arrays.stream(tones).map(evidence::likelihood).toArray();
            double chance = PRIOR.mean(likelihoods);
            chances += chance;
            variance += chance * Math.pow(PRIOR.with(likelihoods).estimate(log2Times).sd(), 2);
        }
        assertEquals(1, chances, 1e-9, "some verdict there will be");
        assertEquals(Math.sqrt(variance), sheet.spreadAfterStops(), 1e-9);
    }

    @Test
    void knownFilmsAreRightAsOftenAsSkyAndEyeAllow() {
        Posterior known = PRIOR;
        for (int sheet = 0; sheet < 40; sheet++) {
            known = known.with(Arrays.stream(PRIOR.grid().toneStops(Sheets.steady("", FILM, 256,
                    Math.pow(256, 1.3), Sheets.judged(ToneWord.MIDDLE)).exposed().openings()))
                    .map(Evidence.ofTone(0, 0.1)::likelihood).toArray());
        }
        // 2 Φ(0.5 / 0.6) - 1 = 0.595 (Abramowitz and Stegun, table 26.1), a little less for steps of a third
        // of a stop
        assertEquals(0.595, new NextSheet(known,
                wanted(FNumber.series(8), 0)).advice(1).likeliest().rightChance(), 0.02);
    }

    private static NextSheet.Wanted wanted(List<FNumber> fNumbers, double toneStops) {
        return new NextSheet.Wanted(4, fNumbers, 30, 8 * 3600, toneStops);
    }
}
