package gloam.planner;

import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The moments of a night that are good for a wish.
 *
 * @param throughout the minutes in which the shutter may be open
 * @param own        those of them that are good for the opening, the middle or the closing, where these have
 *                   a condition of their own
 */
record Moments(BitSet throughout, Map<Condition.When, BitSet> own) {

    /**
     * The moments at which all conditions hold, none asked for more minutes than those before leave; empty
     * where they leave none.
     */
    static Optional<Moments> of(List<Condition> conditions, BitSet minutes) {
        BitSet throughout = minutes;
        for (Condition condition : conditions) {
            if (condition.when() == Condition.When.THROUGHOUT) {
                throughout = condition.holds(throughout);
                if (throughout.isEmpty()) {
                    return Optional.empty();
                }
            }
        }
        Map<Condition.When, BitSet> own = new EnumMap<>(Condition.When.class);
        for (Condition condition : conditions) {
            if (condition.when() != Condition.When.THROUGHOUT) {
                BitSet good = condition.holds(own.getOrDefault(condition.when(), throughout));
                if (good.isEmpty()) {
                    return Optional.empty();
                }
                own.put(condition.when(), good);
            }
        }
        return Optional.of(new Moments(throughout, own));
    }

    /** Whether an exposure is open at good moments alone. */
    boolean hold(int openMin, int middleMin, int closeMin) {
        return throughout.nextClearBit(openMin) > closeMin
                && (own.isEmpty() || at(Condition.When.AT_OPENING).get(openMin)
                && at(Condition.When.AT_MIDDLE).get(middleMin) && at(Condition.When.AT_CLOSING)
                .get(closeMin));
    }

    /** The minutes that are good for a moment of an exposure. */
    BitSet at(Condition.When when) {
        return own.getOrDefault(when, throughout);
    }
}
