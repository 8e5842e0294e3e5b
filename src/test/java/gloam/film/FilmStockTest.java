package gloam.film;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.units.BadInput;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FilmStockTest {

    @ParameterizedTest
    @CsvSource({"100, 0.080", "125, 0.064", "400, 0.020"})
    void midToneIsWhatAMeterAsksFor(double iso, double publishedLxS) {
        // A meter always asks for 8/ISO lx s (photography forum post 1770208 and 1338501, read before
        // 2026-11-25). 2 % because 8 stands for 8.125 there
        assertEquals(publishedLxS, Films.print(iso, Reciprocity.none()).midToneLxS(), 0.02 * publishedLxS);
    }

    @Test
    void filmSlowerThanRatedNeedsMoreLight() {
        FilmStock rated = Films.print(100, Reciprocity.none());
        FilmStock slow = new FilmStock("slow", 100, rated.kind(), rated.layers(), rated.tone(), 1, "made up");
        assertEquals(2 * rated.midToneLxS(), slow.midToneLxS(), 1e-15); // rounding
    }

    @Test
    void greenLayerSetsTheTimesOfColourFilm() {
        FilmStock colour = Films.colour(100, Reciprocity.power(1.1, 1), Reciprocity.power(1.2, 1),
                Reciprocity.power(1.3, 1));
        assertEquals(1.2, colour.reciprocity().exponentAt(10));
        assertTrue(colour.colour());
        assertFalse(Films.print(100, Reciprocity.none()).colour());
    }

    @Test
    void refusesWhatNoFilmIs() {
        FilmStock print = Films.print(100, Reciprocity.none());
        FilmStock.Layer layer = print.layers().get(0);
        assertThrows(BadInput.class, () -> Films.print(0, Reciprocity.none()));
        assertThrows(BadInput.class, () -> new FilmStock("two layers", 100, FilmStock.Kind.POSITIVE,
                List.of(layer, layer), print.tone(), 0, ""));
        assertThrows(BadInput.class, () -> new FilmStock("wrong way", 100, FilmStock.Kind.NEGATIVE,
                List.of(layer), print.tone(), 0, ""));
        assertThrows(BadInput.class, () -> new FilmStock("far off", 100, FilmStock.Kind.POSITIVE,
                List.of(layer), print.tone(), 9, ""));
    }
}
