package gloam.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.film.FilmStock;
import gloam.film.Films;
import gloam.film.Reciprocity;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ColourShiftTest {

    @Test
    void filterIsWhatTheMakerAsksFor() {
        // A colour slide film that at 32 s needs one stop and 12.5 M (maker's table, its filter from
        // memory): red and blue lose 0.301 in log exposure, P = 1.200, green 0.176, P = 1.117
        FilmStock film = Films.colour(50, Reciprocity.power(1.200, 1), Reciprocity.power(1.117, 1),
                Reciprocity.power(1.200, 1));
        ColourShift shift = ColourShift.of(film, 32);
        // the exponents are rounded
        assertEquals(12.5, ColourShift.colourCorrection(shift.greenStops()), 0.1);
        assertEquals(Optional.of("green, CC 12"), shift.cast());
        assertEquals(0, shift.redStops() + shift.greenStops() + shift.blueStops(), 1e-12);
    }

    @Test
    void layerThatLosesMostLeavesTheOppositeCast() {
        FilmStock film = Films.colour(100, Reciprocity.power(1.1, 1), Reciprocity.power(1.1, 1),
                Reciprocity.power(1.3, 1));
        // 0.2 · log10 100 = 0.40
        assertEquals(Optional.of("yellow, CC 40"), ColourShift.of(film, 100).cast());
        assertEquals(Optional.empty(), ColourShift.of(film, 2).cast());
    }

    @Test
    void exposureTellsHowDimTheLightIs() {
        FilmStock film = Films.colour(100, Reciprocity.power(1.1, 1), Reciprocity.power(1.2, 1),
                Reciprocity.power(1.3, 1));
        ColourShift told = ColourShift.of(film, 100);
        ColourShift read = ColourShift.of(film, ExposureEngine.exposure(film, 100, -3));
        assertEquals(told.redStops(), read.redStops(), 1e-9);
        assertEquals(told.blueStops(), read.blueStops(), 1e-9);
    }

    @Test
    void blackAndWhiteHasNone() {
        ColourShift none = ColourShift.of(Films.print(100, Reciprocity.power(1.3, 1)), 100);
        assertEquals(new ColourShift(0, 0, 0), none);
        assertEquals(Optional.empty(), none.cast());
    }
}
