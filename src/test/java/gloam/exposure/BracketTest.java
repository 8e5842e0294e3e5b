package gloam.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.film.FilmStock;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Stops;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BracketTest {

    private static final FilmStock FILM = Films.print(100, Reciprocity.power(1.3, 1));

    @Test
    void sheetsLieAStopApartAroundTheBestGuess() {
        double bestS = ExposureEngine.exposure(FILM, 100, 0).correctedS();
        List<Double> three = bracket(100, 3).exposuresS();
        // rounding of doubles, here and below
        assertEquals(bestS / 2, three.get(0), 1e-9 * bestS);
        assertEquals(bestS, three.get(1), 1e-9 * bestS);
        assertEquals(bestS * 2, three.get(2), 1e-9 * bestS);
        assertEquals(bestS, bracket(100, 1).exposuresS().get(0));
        List<Double> two = bracket(100, 2).exposuresS();
        assertEquals(bestS, Math.sqrt(two.get(0) * two.get(1)), 1e-9 * bestS);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5})
    void chanceIsHowOftenOneOfThemHits(int sheets) {
        Exposure exposure = ExposureEngine.exposure(FILM, 100, 0);
        Bracket bracket = bracket(100, sheets);
        Random random = new Random(20270206);
        int draws = 100_000;
        int hits = 0;
        for (int i = 0; i < draws; i++) {
            double offStops = exposure.spreadStops() * random.nextGaussian();
            double rightS = exposure.correctedS() * Stops.factor(offStops);
            boolean hit = bracket.exposuresS().stream()
                    .anyMatch(s -> Math.abs(Stops.between(s, rightS)) <= 0.5);
            hits += hit ? 1 : 0;
        }
        // three times the count's own scatter
        assertEquals((double) hits / draws, bracket.chanceOfOneHit(), 0.005);
    }

    @Test
    void moreSheetsNeverHurt() {
        assertTrue(bracket(1000, 3).chanceOfOneHit() > bracket(1000, 2).chanceOfOneHit());
        assertThrows(BadInput.class, () -> bracket(1000, 0));
    }

    @Test
    void whatNeverFinishesHasNone() {
        Interval night = Interval.lasting(Instant.parse("2027-02-06T20:00:00Z"), Duration.ofHours(1));
        LightCurve dim = LightCurve.constant(1e-9);
        assertEquals(Optional.empty(),
                Bracket.of(toneStops -> ExposureEngine.exposure(FILM, dim, night, toneStops), 0, 3));
    }

    private static Bracket bracket(double meteredS, int sheets) {
        return Bracket.of(toneStops -> ExposureEngine.exposure(FILM, meteredS, toneStops), 0, sheets)
                .orElseThrow();
    }
}
