package gloam.proof;

import gloam.exposure.Band;
import gloam.film.FilmStock;
import java.util.List;
import java.util.stream.IntStream;

/**
 * One layer of a film, as a film of its own.
 *
 * @param film the film with this layer alone
 * @param band the light it takes
 */
record Layer(FilmStock film, Band band) {

    /** The layers of a film in its order. */
    static List<Layer> of(FilmStock film) {
        return IntStream.range(0, film.layers().size())
                .mapToObj(i -> new Layer(alone(film, film.layers().get(i)),
                        Band.of(film).get(i)))
                .toList();
    }

    private static FilmStock alone(FilmStock film, FilmStock.Layer layer) {
        return new FilmStock(film.name(), film.iso(), film.kind(), List.of(layer), film.tone(),
                film.speedOffsetStops(), film.source());
    }
}
