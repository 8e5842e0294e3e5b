package gloam.view;

import java.util.ArrayList;
import java.util.List;

/** What stands beneath the strip of a night. */
final class StripWords {

    private static final int MOST_LETTERS = 92;

    private StripWords() {
    }

    /** The windows by number, and what is drawn, in lines that fit. */
    static List<String> of(PlanReport.PlannedNightRow night) {
        List<String> lines = new ArrayList<>(List.of(""));
        night.windows().forEach(window -> {
            String name = window.sheet() + " " + window.wish() + ".";
            String last = lines.get(lines.size() - 1);
            if ((last + "  " + name).length() <= MOST_LETTERS) {
                lines.set(lines.size() - 1, (last + "  " + name).strip());
            } else {
                lines.add(name);
            }
        });
        lines.addAll(drawn(night));
        return lines.stream().filter(line -> !line.isEmpty()).toList();
    }

    /** What is drawn how, as one text. */
    static String legend(PlanReport.PlannedNightRow night) {
        return String.join(" ", drawn(night));
    }

    private static List<String> drawn(PlanReport.PlannedNightRow night) {
        List<String> lines = new ArrayList<>(List.of(
                "Heights in degrees: Moon (broad), aims (numbered). Dotted: the zenith's brightness.",
                "6, 12, 18: depth of the Sun in degrees. A line beside a window: how early and late it"
                + " may be."));
        if (!night.forecast().isEmpty()) {
            lines.add("Pale, down from the upper edge: cloud by the forecast, deepest where overcast.");
        }
        return lines;
    }
}
