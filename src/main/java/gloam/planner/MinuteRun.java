package gloam.planner;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Unbroken minutes of a night, both ends in it.
 *
 * @param first the first minute
 * @param last  the last minute, not before the first
 */
record MinuteRun(int first, int last) {

    /** The runs that minutes make, in order. */
    static List<MinuteRun> of(BitSet minutes) {
        List<MinuteRun> runs = new ArrayList<>();
        for (int first = minutes.nextSetBit(0); first >= 0;) {
            int after = minutes.nextClearBit(first);
            runs.add(new MinuteRun(first, after - 1));
            first = minutes.nextSetBit(after);
        }
        return runs;
    }
}
