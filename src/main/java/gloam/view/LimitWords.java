package gloam.view;

import gloam.planner.Between;
import gloam.planner.Limits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts what narrows a wish into words. */
final class LimitWords {

    private LimitWords() {
    }

    /** All limits, one after the other; empty where there are none. */
    static Optional<String> of(Limits limits) {
        List<String> words = new ArrayList<>();
        add(words, "Moon's altitude", limits.moonAltitudeDeg(), "°");
        add(words, "Moon lit", limits.moonLitPercent(), " %");
        limits.moonSide().ifPresent(side -> words.add("Moon " + WishRow.words(side)));
        add(words, "Sun's depth", limits.sunDepthDeg(), "°");
        limits.time().ifPresent(time -> words.add("by the clock " + time.from() + " … " + time.to()));
        add(words, "in twilight", limits.twilightMin(), " min");
        add(words, "of the tone in twilight", limits.twilightPercent(), " %");
        add(words, "arc", limits.arcDeg(), "°");
        return words.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", words));
    }

    private static void add(List<String> words, String what, Between bounds, String unit) {
        bounds.least().ifPresent(least -> words.add(what + " from " + Wording.plain(least) + unit));
        bounds.most().ifPresent(most -> words.add(what + " up to " + Wording.plain(most) + unit));
    }
}
