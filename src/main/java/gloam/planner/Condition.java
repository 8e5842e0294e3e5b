package gloam.planner;

import java.util.BitSet;
import java.util.function.UnaryOperator;

/**
 * A requirement of a wish on a night, which knows when it holds.
 *
 * @param what  what is required
 * @param when  at which moments of an exposure it must hold
 * @param among those of some minutes of the night in which it holds; a new set
 */
record Condition(Requirement what, When when, UnaryOperator<BitSet> among) {

    /** The moments of an exposure. */
    enum When { THROUGHOUT, AT_OPENING, AT_MIDDLE, AT_CLOSING }

    /** Those of some minutes in which it holds; what it says of one hangs on no other. */
    BitSet holds(BitSet minutes) {
        return among.apply(minutes);
    }
}
