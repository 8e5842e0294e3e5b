package gloam.planner;

import gloam.ephemeris.Body;
import java.util.ArrayList;
import java.util.List;

/** A part of a wish that a window misses by some amount. */
public sealed interface Miss {

    /** Less is not worth a word beside the spread of the tone. */
    double LEAST_STOPS = 0.15;
    /** A shorter or longer trail than that, in mm. */
    double LEAST_MM = 0.5;
    /** A body fainter by that, in mag. */
    double LEAST_MAG = 0.05;

    /** The sky is lighter than wanted, darker where negative. */
    record Tone(double stops) implements Miss { }

    /** The trail is longer than wanted, shorter where negative. */
    record Trail(double mm) implements Miss { }

    /** Fewer stars record than wanted. */
    record Stars(int recorded, int wanted) implements Miss { }

    /** A body is too faint to record. */
    record TooFaint(Body body, double mag) implements Miss { }

    /**
     * The parts missed.
     *
     * @param toneStops    the tone made
     * @param trailMm      the trail length made
     * @param recorded     how many stars record
     * @param shortfallMag by how much a body that must record is too faint
     */
    static List<Miss> of(Wish wish, double toneStops, double trailMm, int recorded, double shortfallMag) {
        List<Miss> misses = new ArrayList<>();
        double offStops = wish.tone() instanceof Wish.Tone.Near near ? toneStops - near.stops()
                : wish.tone() instanceof Wish.Tone.AtMost most ? Math.max(0, toneStops - most.stops()) : 0;
        if (Math.abs(offStops) >= LEAST_STOPS) {
            misses.add(new Tone(offStops));
        }
        double offMm = Math.max(0, trailMm - wish.trail().mostMm().orElse(Double.POSITIVE_INFINITY))
                - Math.max(0, wish.trail().leastMm().orElse(0) - trailMm);
        if (Math.abs(offMm) >= LEAST_MM) {
            misses.add(new Trail(offMm));
        }
        if (wish.records() instanceof Wish.Records.AtLeast least && recorded < least.trails()) {
            misses.add(new Stars(recorded, least.trails()));
        }
        if (wish.records() instanceof Wish.Records.One one && shortfallMag >= LEAST_MAG) {
            misses.add(new TooFaint(one.body(), shortfallMag));
        }
        return misses;
    }
}
