package gloam.film;

import java.util.List;

/** Films for tests. */
public final class Films {

    private Films() {
    }

    /** A black-and-white print film that makes its mid-tone with that exposure. */
    public static FilmStock ofMidTone(double midToneLxS, Reciprocity law) {
        return print(8.125 / midToneLxS, law);
    }

    /** A black-and-white print film. */
    public static FilmStock print(double iso, Reciprocity law) {
        return new FilmStock("test print", iso, FilmStock.Kind.POSITIVE, List.of(layer("mono", law)),
                ToneCurve.PRINT, 0, "made up");
    }

    /** A black-and-white negative film. */
    public static FilmStock negative(double iso, Reciprocity law) {
        return new FilmStock("test negative", iso, FilmStock.Kind.NEGATIVE, List.of(layer("mono", law)),
                ToneCurve.NEGATIVE, 0, "made up");
    }

    /** A colour print film with a law for each layer. */
    public static FilmStock colour(double iso, Reciprocity red, Reciprocity green, Reciprocity blue) {
        return new FilmStock("test colour", iso, FilmStock.Kind.POSITIVE,
                List.of(layer("red", red), layer("green", green), layer("blue", blue)), ToneCurve.PRINT, 0,
                "made up");
    }

    private static FilmStock.Layer layer(String name, Reciprocity law) {
        return new FilmStock.Layer(name, law);
    }
}
