package gloam.planner;

import gloam.ephemeris.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A part of a wish that a window misses by some amount. */
public sealed interface Miss {

    /** Less is not worth a word beside the spread of the tone. */
    double LEAST_STOPS = 0.15;
    /** A shorter or longer trail than that, in mm. */
    double LEAST_MM = 0.5;
    /** Something fainter by that, in mag. */
    double LEAST_MAG = 0.05;

    /** The sky is lighter than wanted, darker where negative. */
    record Tone(double stops) implements Miss { }

    /** The trail is longer than wanted, shorter where negative. */
    record Trail(double mm) implements Miss { }

    /** Fewer stars record than wanted. */
    record Stars(int recorded, int wanted) implements Miss { }

    /** A body or star is too faint to record. */
    record TooFaint(Target target, double mag) implements Miss { }

    /**
     * The parts missed.
     *
     * @param toneStops    the tone made
     * @param trailMm      the trail length made
     * @param recorded     how many stars record
     * @param shortfallMag by how much what must record is too faint
     * @param faintest     what that is, where it goes by names
     */
    static List<Miss> of(Wish wish, double toneStops, double trailMm, int recorded, double shortfallMag,
            Optional<Target> faintest) {
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
        faintest.filter(target -> shortfallMag >= LEAST_MAG)
                .ifPresent(target -> misses.add(new TooFaint(target, shortfallMag)));
        return misses;
    }
}
