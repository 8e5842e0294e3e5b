package gloam.planner;

import gloam.units.Interval;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A requirement of a wish on a night, which knows when it holds.
 *
 * @param what  what is required
 * @param when  at which moments of an exposure it must hold
 * @param among those of some minutes of the night in which it holds; a new set
 * @param spans from when to when it holds, to the instant and by day too, where that is known without looking
 */
record Condition(Requirement what, When when, UnaryOperator<BitSet> among, Optional<List<Interval>> spans) {

    /** The moments of an exposure. */
    enum When { THROUGHOUT, AT_OPENING, AT_MIDDLE, AT_CLOSING }

    /** Those of some minutes in which it holds; what it says of one hangs on no other. */
    BitSet holds(BitSet minutes) {
        return among.apply(minutes);
    }
}
