package gloam.planner;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/** The moments of a night that are good for a wish. */
final class Moments {

    private static final int LOOKS = 2;
    private static final int MOST_NODES = 6;

    private final BitSet throughout;
    private final BitSet[] byWhen;

    private Moments(BitSet throughout, BitSet[] byWhen) {
        this.throughout = throughout;
        this.byWhen = byWhen;
    }

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
        BitSet[] byWhen = new BitSet[Condition.When.values().length];
        Arrays.fill(byWhen, throughout);
        for (Condition condition : conditions) {
            if (condition.when() != Condition.When.THROUGHOUT) {
                BitSet good = condition.holds(byWhen[condition.when().ordinal()]);
                if (good.isEmpty()) {
                    return Optional.empty();
                }
                byWhen[condition.when().ordinal()] = good;
            }
        }
        return Optional.of(new Moments(throughout, byWhen));
    }

    /**
     * Whether all conditions may hold for an exposure: none is missed. Looked at is every so many nodes that
     * two looks fall in every exposure, every minute of shorter ones.
     *
     * @param shortestMin how long the shutter is open at least
     */
    static boolean mayHold(List<Condition> conditions, BitSet minutes, int shortestMin) {
        int nodes = Math.min(MOST_NODES, shortestMin / LOOKS / NightClock.NODE_MIN);
        int everyMin = nodes == 0 ? 1 : nodes * NightClock.NODE_MIN;
        BitSet looks = new BitSet();
        for (int minute = 0; minute < minutes.length(); minute += everyMin) {
            looks.set(minute, minutes.get(minute));
        }
        for (Condition condition : conditions) {
            if (condition.when() == Condition.When.THROUGHOUT && !looks.isEmpty()) {
                looks = condition.holds(looks);
            }
        }
        BitSet around = new BitSet();
        int needed = (shortestMin + 1) / everyMin;
        for (int first = looks.nextSetBit(0); first >= 0;) {
            int last = first;
            while (looks.get(last + everyMin)) {
                last += everyMin;
            }
            if ((last - first) / everyMin + 1 >= needed) {
                around.set(Math.max(0, first - everyMin), last + everyMin + 1);
            }
            first = looks.nextSetBit(last + 1);
        }
        around.and(minutes);
        return !around.isEmpty() && conditions.stream().filter(condition ->
                condition.when() != Condition.When.THROUGHOUT)
                .noneMatch(condition -> condition.holds(around).isEmpty());
    }

    /** Whether an exposure is open at good moments alone. */
    boolean hold(int openMin, int middleMin, int closeMin) {
        return throughout.nextClearBit(openMin) > closeMin && at(Condition.When.AT_OPENING).get(openMin)
                && at(Condition.When.AT_MIDDLE).get(middleMin) && at(Condition.When.AT_CLOSING).get(closeMin);
    }

    /** The minutes at which exposures of so many minutes may open, each as {@link #hold} has it. */
    BitSet openings(int durationMin) {
        BitSet openings = new BitSet();
        for (MinuteRun run : MinuteRun.of(throughout)) {
            openings.set(run.first(), Math.max(run.first(), run.last() - durationMin + 1));
        }
        openings.and(at(Condition.When.AT_OPENING));
        openings.and(earlier(at(Condition.When.AT_MIDDLE), durationMin / 2));
        openings.and(earlier(at(Condition.When.AT_CLOSING), durationMin));
        return openings;
    }

    private static BitSet earlier(BitSet minutes, int byMin) {
        return minutes.get(byMin, Math.max(byMin, minutes.length()));
    }

    /** The minutes in which the shutter may be open. */
    BitSet throughout() {
        return throughout;
    }

    /**
     * The minutes that are good for a moment of an exposure: {@link #throughout()} where it has no condition
     * of its own.
     */
    BitSet at(Condition.When when) {
        return byWhen[when.ordinal()];
    }
}
