package gloam.proof;

import gloam.ephemeris.Direction;
import java.time.Instant;
import java.util.function.Function;

/** Light of wide evenly lit things: of the sky, or of the land. */
@FunctionalInterface
interface WideLight {

    /** The light that comes from a direction, at any instant. */
    Function<Instant, Glow> from(Direction direction);

    /**
     * Light of one direction.
     *
     * @param luminanceCdM2 how bright
     * @param colourBv      its colour index B−V, NaN where unknown
     */
    record Glow(double luminanceCdM2, double colourBv) {
    }
}
