package gloam.planner;

import java.util.BitSet;

/**
 * Something that must hold for a wish to be exposed, and the minutes of the night in which it does.
 *
 * @param what    what holds, in words that can stand before "only 20:10–21:30"
 * @param when    at which moments of an exposure it must hold
 * @param minutes the minutes in which it holds
 * @param never   what to say when it holds at no minute of the night
 */
record Condition(String what, When when, BitSet minutes, String never) {

    /** The moments of an exposure. */
    enum When { THROUGHOUT, AT_OPENING, AT_MIDDLE, AT_CLOSING }
}
