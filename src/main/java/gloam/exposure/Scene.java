package gloam.exposure;

import gloam.exposure.ExposureTable.PassingStars;
import java.util.Optional;

/**
 * What is before the lens.
 *
 * @param sky    the sky at the frame's centre
 * @param ground the lit ground, where the exposure is for it and not for the sky; open when the sky is
 * @param stars  the stars that cross the frame's centre
 */
public record Scene(SkyOnFilm sky, Optional<SkyOnFilm> ground, PassingStars stars) {

    /** A sky to expose for. */
    public static Scene of(SkyOnFilm sky, PassingStars stars) {
        return new Scene(sky, Optional.empty(), stars);
    }

    /** The same, its light known otherwise. */
    public Scene known(SkyDoubt otherwise) {
        return new Scene(sky.known(otherwise), ground.map(lit -> lit.known(otherwise)), stars);
    }

    /** What the exposure is for. */
    SkyOnFilm subject() {
        return ground.orElse(sky);
    }
}
