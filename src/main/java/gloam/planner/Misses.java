package gloam.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Puts into words by how much a window misses what its wish asks for. */
final class Misses {

    /** Less is not worth a word beside the spread of the tone. */
    private static final double LEAST_STOPS = 0.15;
    private static final double LEAST_MM = 0.5;
    private static final double LEAST_MAG = 0.05;

    private Misses() {
    }

    /**
     * The parts missed, such as "tone 0.6 stops darker than wanted".
     *
     * @param toneStops    the tone made
     * @param trailMm      the trail length made
     * @param recorded     how many stars record
     * @param shortfallMag by how much a body that must record is too faint
     */
    static List<String> of(Wish wish, double toneStops, double trailMm, int recorded, double shortfallMag) {
        List<String> misses = new ArrayList<>();
        double offStops = wish.tone() instanceof Wish.Tone.Near near ? toneStops - near.stops()
                : wish.tone() instanceof Wish.Tone.AtMost most ? Math.max(0, toneStops - most.stops()) : 0;
        if (Math.abs(offStops) >= LEAST_STOPS) {
            misses.add(words("tone %.1f stops %s than wanted", offStops, "lighter", "darker"));
        }
        double offMm = Math.max(0, trailMm - wish.trail().mostMm().orElse(Double.POSITIVE_INFINITY))
                - Math.max(0, wish.trail().leastMm().orElse(0) - trailMm);
        if (Math.abs(offMm) >= LEAST_MM) {
            misses.add(words("trail %.0f mm %s than wanted", offMm, "longer", "shorter"));
        }
        if (wish.records() instanceof Wish.Records.AtLeast least && recorded < least.trails()) {
            misses.add(recorded + " of the " + least.trails() + " stars wanted record");
        }
        if (wish.records() instanceof Wish.Records.One one && shortfallMag >= LEAST_MAG) {
            misses.add(String.format(Locale.ROOT, "%s %.1f mag too faint", one.body().properName(), shortfallMag));
        }
        return misses;
    }

    private static String words(String form, double off, String more, String less) {
        return String.format(Locale.ROOT, form, Math.abs(off), off > 0 ? more : less);
    }
}
