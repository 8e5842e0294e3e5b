package gloam.cli;

import gloam.planner.Trip;
import gloam.units.BadInput;
import java.util.Optional;

/** The camera: one of the trip's, with whatever is given changed. */
final class TripCameraOptions extends CameraOptions {

    private final Option<String> name = option("--camera", "NAME", String.class,
            "Name of one of the trip's cameras (default: its first).");

    /** A trip with the camera asked for alone, whose film is the trip's then. */
    Optional<Trip> of(Optional<Trip> trip) {
        return of(trip, Optional.empty());
    }

    /** The same with another camera where none is asked for. */
    Optional<Trip> of(Optional<Trip> trip, Optional<String> usual) {
        if (name.given() && trip.isEmpty()) {
            throw new BadInput("--camera names a camera of a trip; add --trip FILE");
        }
        return trip.map(all -> FromOption.of("--camera", () -> all.by(name.value().or(() -> usual)
                .orElse(all.camera().name()))));
    }
}
