package gloam.planner;

import gloam.film.FilmStock;
import gloam.gear.Camera;
import gloam.units.Range;
import java.util.Optional;

/**
 * A camera carried on a trip.
 *
 * @param camera the camera; its name is unique in the trip
 * @param film   the film in it where it is not the trip's
 */
public record CarriedCamera(Camera camera, Optional<FilmStock> film) {

    /** How many may be carried. */
    public static final Range CAMERAS = new Range("number of cameras", 1, 4, "");

    /** Whether its lens has the f-numbers that a wish names: one of the first opening, all of later ones. */
    public boolean takes(Wish wish) {
        return (wish.fNumbers().isEmpty() || wish.fNumbers().stream()
                .anyMatch(camera.lens().fNumbers()::contains))
                && wish.later().stream().flatMap(later -> later.fNumber().stream())
                .allMatch(camera.lens().fNumbers()::contains);
    }
}
