package gloam.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.film.FilmStock;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.gear.FNumber;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColourShiftTest {

    @ParameterizedTest
    @CsvSource({"4, 1.167, 1.084, 5", "16, 1.167, 1.084, 10", "32, 1.200, 1.117, 12.5"})
    void filterOfEachLineOfATableIsWhatTheMakerAsksFor(double meteredS, double outer, double green,
            double cc) {
        // The same film at 4 s (a third of a stop, 5 M), 16 s (two thirds, 10 M) and 32 s (one, 12.5 M), its
        // filters from memory: exponents of red and blue and of green independently computed, rounded to
        // 0.001
        FilmStock film = Films.colour(50, Reciprocity.power(outer, 1), Reciprocity.power(green, 1),
                Reciprocity.power(outer, 1));
        assertEquals(cc, ColourShift.colourCorrection(shift(film, meteredS).greenStops()), 0.15);
    }

    @Test
    void filterIsWhatTheMakerAsksFor() {
        // A colour slide film that at 32 s needs one stop and 12.5 M (maker's table, its filter from
        // memory): red and blue lose 0.301 in log exposure, P = 1.200, green 0.176, P = 1.117
        FilmStock film = Films.colour(50, Reciprocity.power(1.200, 1), Reciprocity.power(1.117, 1),
                Reciprocity.power(1.200, 1));
        ColourShift shift = shift(film, 32);
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
        assertEquals(Optional.of("yellow, CC 40"), shift(film, 100).cast());
        assertEquals(Optional.empty(), shift(film, 2).cast());
    }

    @Test
    void blackAndWhiteHasNone() {
        ColourShift none = ColourShift.ofTones(List.of(-2.0));
        assertEquals(new ColourShift(0, 0, 0), none);
        assertEquals(Optional.empty(), none.cast());
    }

    /** Under steady light whose mid-tone is metered at that time, exposed for the green layer's mid-tone. */
    private static ColourShift shift(FilmStock film, double meteredS) {
        SkyOnFilm sky = new SkyOnFilm(LightCurve.constant(film.midToneLxS() / meteredS), Optional.empty());
        double openS = sky.exposure(film, FNumber.exact(1), 0).correctedS();
        return ColourShift.ofTones(film.layers().stream()
                .map(layer -> sky.toneStops(film, layer.reciprocity(), FNumber.exact(1), openS)).toList());
    }
}
