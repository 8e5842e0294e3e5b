package gloam.planner;

import gloam.units.Interval;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/** Finds why a wish cannot be exposed on a night. */
final class Reasons {

    private Reasons() {
    }

    /** A condition and when it holds on a night. */
    private record Held(Condition condition, BitSet minutes, List<Interval> spans) {

        static Held of(Condition condition, NightSky sky) {
            BitSet minutes = condition.spans().map(sky.clock()::during)
                    .orElseGet(() -> condition.holds(sky.sunDown()));
            return new Held(condition, minutes,
                    condition.spans().orElseGet(() -> sky.clock().spans(minutes)));
        }

        boolean at(Condition.When when) {
            return condition.when() == when;
        }
    }

    /** The condition or the pair of conditions that leaves no minute of the night. */
    static Reason closed(List<Condition> conditions, NightSky sky) {
        List<Held> held = conditions.stream().map(condition -> Held.of(condition, sky)).toList();
        Optional<Held> never = held.stream().filter(one -> one.minutes.isEmpty()).findFirst();
        if (never.isPresent()) {
            return new Reason.Never(never.get().condition.what());
        }
        BitSet throughout = sky.sunDown();
        for (Condition.When when : Condition.When.values()) {
            BitSet good = (BitSet) throughout.clone();
            for (Held one : held.stream().filter(one -> one.at(when)).toList()) {
                if (!good.intersects(one.minutes)) {
                    return exclusion(held, one, sky.clock().spans(good));
                }
                good.and(one.minutes);
            }
            throughout = when == Condition.When.THROUGHOUT ? good : throughout;
        }
        throw new IllegalStateException("all conditions hold together");
    }

    private static Reason exclusion(List<Held> all, Held last, List<Interval> others) {
        Optional<Held> other = all.stream().filter(one -> !one.minutes.intersects(last.minutes)).findFirst();
        return new Reason.Exclusive(other.map(one -> one.condition.what()), other.map(Held::spans)
                .orElse(others), last.condition.what(), last.spans);
    }
}
