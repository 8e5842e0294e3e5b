package gloam.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.film.FilmStock;
import gloam.units.Stops;
import org.junit.jupiter.api.Test;

class BuiltInFilmTest {

    @Test
    void instantPrintNeedsAboutThreeTimesEighteenMinutes() {
        // Common practice, no source: 18 min metered at f/12 needed about three times that on one instant
        // film. Half a stop, the honesty claimed for any time
        FilmStock film = FilmFile.film("instant-mono-640");
        double givenS = film.reciprocity().correctedS(1080);
        assertEquals(0, Stops.between(3 * 1080, givenS), 0.5);
    }
}
