package gloam.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.film.FilmStock;
import gloam.film.Films;
import gloam.film.Reciprocity;
import gloam.gear.FNumber;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A colour-correction filter is advised by what the sheet is with it on. */
class CorrectionFilterTest {

    /**
     * Exponents of red, green and blue; colour of the light; the filter's hue: reddish light, B−V 0.95 or
     * 1.8, lacks more blue than it has too much red (Planck's law), and so does a blue layer that loses most.
     */
    @ParameterizedTest
    @CsvSource({"1.2, 1.117, 1.2, NaN, magenta", "1.1, 1.1, 1.3, NaN, blue", "1.0, 1.0, 1.0, 1.8, blue",
        "1.0, 1.0, 1.0, -0.2, yellow", "1.3, 1.2, 1.2, NaN, red",
        "1.05, 1.1, 1.2, 0.95, blue", "1.1, 1.2, 1.2, NaN, cyan"})
    void sheetWithTheFilterOnHasNoCast(double red, double green, double blue, double colourBv, String hue) {
        FilmStock film = Films.colour(50, Reciprocity.power(red, 1), Reciprocity.power(green, 1),
                Reciprocity.power(blue, 1));
        double meteredS = 100;
        double lx = film.midToneLxS() / meteredS;
        SkyOnFilm sky = new SkyOnFilm(LightCurve.constant(lx), band -> LightCurve.constant(lx
                * band.share(colourBv)), Optional.empty(), SkyDoubt.USUAL);
        double openS = sky.exposure(film, FNumber.ONE, 0).correctedS();
        List<Double> bare = tones(sky, film, openS, List.of(1.0, 1.0, 1.0));
        assertTrue(ColourShift.ofTones(bare).cast().isPresent());
        CorrectionFilter filter = CorrectionFilter.of(bare, shares -> tones(sky, film, openS, shares))
                .orElseThrow();
        assertEquals(hue, filter.hue());
        // density is the logarithm to base 10 of what is held back; cyan, magenta, yellow hold one band back
        double share = Math.pow(10, -filter.cc() / 100);
        List<String> holdsBack = switch (hue) {
            case "cyan" -> List.of("red");
            case "magenta" -> List.of("green");
            case "yellow" -> List.of("blue");
            case "red" -> List.of("green", "blue");
            case "blue" -> List.of("red", "green");
            default -> List.of("red", "blue");
        };
        ColourShift left = ColourShift.ofTones(tones(sky, film, openS, IntStream.range(0, 3).mapToObj(layer ->
                holdsBack.contains(List.of("red", "green", "blue").get(layer)) ? share : 1.0).toList()));
        int odd = ColourShift.ofTones(bare).odd();
        assertEquals(0, left.ofLayer(odd), 0.01);
    }

    private static List<Double> tones(SkyOnFilm sky, FilmStock film, double openS, List<Double> shares) {
        return sky.layerToneStops(film, FNumber.ONE, openS, shares);
    }

    /** Green leads by 0.125 in log exposure; its layer answers by 1.117 to what the filter holds back. */
    @Test
    void filterIsWeakerThanTheCastAsLayersFailInDimmerLight() {
        FilmStock film = Films.colour(50, Reciprocity.power(1.2, 1), Reciprocity.power(1.117, 1),
                Reciprocity.power(1.2, 1));
        SkyOnFilm sky = new SkyOnFilm(LightCurve.constant(film.midToneLxS() / 32), Optional.empty());
        double openS = sky.exposure(film, FNumber.ONE, 0).correctedS();
        List<Double> bare = tones(sky, film, openS, List.of(1.0, 1.0, 1.0));
        assertEquals(12.5 / 1.117, CorrectionFilter.of(bare, shares -> tones(sky, film, openS, shares))
                .orElseThrow().cc(), 0.1);
    }

    @Test
    void noFilterWithoutACast() {
        assertEquals(Optional.empty(), CorrectionFilter.of(List.of(0.1, 0.0, 0.1), shares -> List.of()));
        assertEquals(Optional.empty(), CorrectionFilter.of(List.of(0.5), shares -> List.of()));
    }
}
