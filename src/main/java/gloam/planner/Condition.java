package gloam.planner;

import gloam.units.Interval;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
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

    /** What holds from some instants to others, all through an exposure. */
    static Condition during(Requirement what, NightClock clock, List<Interval> spans) {
        BitSet minutes = clock.during(spans);
        return new Condition(what, When.THROUGHOUT, among -> both(among, minutes), Optional.of(spans));
    }

    /** What holds in some minutes. */
    static Condition at(Requirement what, When when, BitSet minutes) {
        return new Condition(what, when, among -> both(among, minutes), Optional.empty());
    }

    /** What holds where a number is not below zero. */
    static Condition where(Requirement what, When when, NightClock clock, IntToDoubleFunction margin) {
        return new Condition(what, when, among -> clock.where(among, margin), Optional.empty());
    }

    private static BitSet both(BitSet some, BitSet others) {
        BitSet both = (BitSet) some.clone();
        both.and(others);
        return both;
    }

    /** Those of some minutes in which it holds; what it says of one hangs on no other. */
    BitSet holds(BitSet minutes) {
        return among.apply(minutes);
    }
}
