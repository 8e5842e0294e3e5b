package gloam.journal;

import gloam.units.Range;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a sheet came out, as far as that is known.
 *
 * @param verdict     the sky's tone
 * @param faintestMag V magnitude of the faintest star or planet seen in the trails
 * @param kept        whether the sheet is a keeper
 * @param spoiledBy   what spoiled it, each once; empty for a sound sheet
 */
public record Outcome(Optional<Verdict> verdict, OptionalDouble faintestMag, Optional<Boolean> kept,
                      List<Spoiler> spoiledBy) {

    /** Allowed magnitudes. */
    public static final Range MAGNITUDE = new Range("magnitude", -14, 20, "mag");

    /**
     * Removes duplicate spoilers; refuses a magnitude outside its range with {@link gloam.units.BadInput}.
     */
    public Outcome {
        faintestMag.ifPresent(MAGNITUDE::check);
        spoiledBy = spoiledBy.stream().distinct().toList();
    }

    /** Whether it says anything about the film. */
    public boolean judged() {
        return verdict.isPresent() || faintestMag.isPresent();
    }
}
