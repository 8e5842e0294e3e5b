package gloam.planner;

import gloam.exposure.TrailLimit;
import gloam.film.FilmStock;
import gloam.gear.Camera;
import gloam.gear.FNumber;
import java.util.List;

/**
 * What a wish is exposed with.
 *
 * @param camera   the camera
 * @param film     the wish's film, or the trip's
 * @param fNumbers the f-numbers to choose from, growing
 */
record Kit(Camera camera, FilmStock film, List<FNumber> fNumbers) {

    private static final double SECONDS = 60;

    /** The kit of a wish on a trip. */
    static Kit of(Trip trip, Wish wish) {
        return new Kit(trip.camera(), wish.film().orElse(trip.film()),
                wish.fNumbers().isEmpty() ? trip.camera().lens().fNumbers() : wish.fNumbers().stream().sorted().toList());
    }

    /** What a star on the equator meets through an f-number between two minutes, without loss in air. */
    TrailLimit.Circumstances circumstances(FramedLight light, FNumber fNumber, int openMin, int closeMin) {
        return new TrailLimit.Circumstances(film, camera.lens(), fNumber, (closeMin - openMin) * SECONDS,
                light.through(fNumber).progress(openMin, closeMin),
                light.illuminanceLx(fNumber, openMin + (closeMin - openMin) / 2),
                FrameStars.equatorMmS(camera.lens()), 0);
    }
}
