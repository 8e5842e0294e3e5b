package gloam.planner;

import gloam.film.FilmStock;
import gloam.gear.Camera;
import java.util.List;

/**
 * What a wish is exposed with.
 *
 * @param camera   the camera
 * @param film     the wish's film, or the trip's
 * @param fNumbers the f-numbers to choose from, growing
 */
record Kit(Camera camera, FilmStock film, List<Double> fNumbers) {

    /** The kit of a wish on a trip. */
    static Kit of(Trip trip, Wish wish) {
        return new Kit(trip.camera(), wish.film().orElse(trip.film()),
                wish.fNumbers().isEmpty() ? trip.camera().lens().fNumbers() : wish.fNumbers().stream().sorted().toList());
    }
}
