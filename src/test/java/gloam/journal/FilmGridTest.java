package gloam.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.exposure.ExposureEngine;
import gloam.exposure.LightCurve;
import gloam.film.FilmStock;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.film.ReciprocityTable;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class FilmGridTest {

    private static final Instant START = Instant.parse("2027-02-08T20:00:00Z");
    private static final Interval TWO_HOURS = Interval.lasting(START, Duration.ofHours(2));
    private static final FilmStock FILM = Films.print(640, Reciprocity.table(List.of(
            new ReciprocityTable.Point(1, 1.5), new ReciprocityTable.Point(100, 400))));

    @Test
    void tonesAreThoseOfTheExposureEngine() {
        // dusk: a tenth of the light every 20 minutes on top of a dark sky; the engine asks every minute, the
        // sheet knows the light every 5 minutes
        LightCurve dusk = at -> 2e-6 + 2e-4 * Math.pow(10, -Duration.between(START, at).toSeconds() / 1200.0);
        Opening opening = new Opening(TWO_HOURS, IntStream.rangeClosed(0, 24)
                .mapToObj(step -> dusk.illuminanceLx(START.plusSeconds(300L * step))).toList());
        FilmGrid grid = new FilmGrid(FILM);
        double[] tones = grid.toneStops(List.of(opening));
        for (int film = 0; film < grid.size(); film += 97) {
            double engine = ExposureEngine.toneStops(ExposureEngine.progress(grid.film(film), dusk,
                    TWO_HOURS));
            // a fiftieth of a stop: the light is taken as exponential between the moments known
            assertEquals(engine, tones[film], 0.02);
        }
    }

    @Test
    void openingsAddUp() {
        Opening steady = new Opening(TWO_HOURS, List.of(3e-6));
        Opening again = new Opening(Interval.lasting(START.plusSeconds(10_000), Duration.ofHours(2)),
                List.of(3e-6));
        FilmGrid grid = new FilmGrid(FILM);
        double once = grid.toneStops(List.of(steady))[800];
        assertEquals(once + 1, grid.toneStops(List.of(steady, again))[800], 1e-9);
    }

    @Test
    void timesAreThoseOfItsFilms() {
        FilmGrid grid = new FilmGrid(FILM);
        double[] log2 = grid.log2CorrectedS(300);
        for (int film = 0; film < grid.size(); film += 97) {
            FilmStock one = grid.film(film);
            double ownMeteredS = 300 * one.midToneLxS() / FILM.midToneLxS();
            assertEquals(one.reciprocity().correctedS(ownMeteredS), Math.pow(2, log2[film]),
                    1e-9 * Math.pow(2, log2[film]));
        }
    }

    @Test
    void meanOfAnExponentialIsExact() {
        // (e - 1) / ln e; equal ends are their own mean
        assertEquals(Math.E - 1, FilmGrid.logarithmicMean(1, Math.E), 1e-12);
        assertEquals(3, FilmGrid.logarithmicMean(3, 3));
    }
}
