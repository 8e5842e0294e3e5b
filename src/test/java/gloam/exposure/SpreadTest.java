package gloam.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.film.FilmStock;
import gloam.film.Films;
import gloam.film.Reciprocity;
import org.junit.jupiter.api.Test;

/** How the doubt about a tone grows where a film's law is continued beyond what it was measured for. */
class SpreadTest {

    /**
     * Half a stop is the law's within what it covers, half a stop more each decade beyond; speed and sky add
     * to that in
     * quadrature as they did: 1.0² − 0.5² and 1.5² − 0.5² more.
     */
    @Test
    void halfAStopADecade() {
        Reciprocity law = Reciprocity.power(1.3, 1);
        FilmStock film = Films.print(640, law);
        double inside = Math.pow(ExposureEngine.spreadStops(film, law.coveredToS()), 2);
        assertEquals(inside, Math.pow(ExposureEngine.spreadStops(film, law.coveredToS() / 10), 2), 1e-9);
        assertEquals(inside + 0.75, Math.pow(ExposureEngine.spreadStops(film, 10 * law.coveredToS()), 2),
                1e-9);
        assertEquals(inside + 2, Math.pow(ExposureEngine.spreadStops(film, 100 * law.coveredToS()), 2), 1e-9);
    }
}
