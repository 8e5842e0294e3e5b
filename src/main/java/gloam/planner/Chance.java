package gloam.planner;

import gloam.exposure.Bracket;
import gloam.exposure.TrailLimit;
import gloam.units.StandardNormal;
import java.util.function.DoubleSupplier;

/**
 * The one measure by which exposures are chosen: the chance that a sheet comes out as wished, in steps of a
 * tenth of itself, since it is not known better than that.
 *
 * <p>Where a tone or a trail limit will lie is a normal distribution about what is computed, so that an
 * exposure deep inside a limit has a better chance than one that lies on it. A limit that the computed
 * exposure itself breaks, and an aim that it misses by more than it may, leave no chance at
 * all.
 */
final class Chance {

    /** A chance that is certain, in hundredths. */
    static final int CERTAIN = 100;
    /** A tone aimed at on a single sheet is missed by no more than that; common practice, no source. */
    static final double MOST_MISS_STOPS = 1.5;

    private static final double STEP = 0.9;
    private static final double LOG_STEP = Math.log(STEP);
    /** The steps in hundredths, down to the last that is more than 0. */
    private static final int[] STEPS = new int[1 + (int) (Math.log(0.5 / CERTAIN) / LOG_STEP)];

    static {
        for (int step = 0; step < STEPS.length; step++) {
            STEPS[step] = (int) Math.round(CERTAIN * Math.pow(STEP, step));
        }
    }

    private Chance() {
    }

    /**
     * By how many stops a tone misses what a wish leaves open: over its limit, or too far from its aim; else
     * 0.
     */
    static double missStops(Wish.Tone wanted, double madeStops) {
        return Math.abs(tooLightStops(wanted, madeStops));
    }

    /** The same with its sign: negative for a tone that is too dark. */
    static double tooLightStops(Wish.Tone wanted, double madeStops) {
        if (wanted instanceof Wish.Tone.Near near) {
            double off = madeStops - near.stops();
            return Math.copySign(Math.max(0, Math.abs(off) - near.withinStops()), off);
        }
        return wanted instanceof Wish.Tone.AtMost most ? Math.max(0, madeStops - most.stops()) : 0;
    }

    /** That the tone lies within its limit, or near its aim. */
    static double ofTone(Wish.Tone wanted, double madeStops, DoubleSupplier spreadStops) {
        if (missStops(wanted, madeStops) > 0) {
            return 0;
        } else if (wanted instanceof Wish.Tone.AtMost most) {
            return StandardNormal.below((most.stops() - madeStops) / spreadStops.getAsDouble());
        } else if (wanted instanceof Wish.Tone.Near near) {
            return Bracket.rightChance(madeStops - near.stops(), spreadStops.getAsDouble());
        }
        return 1;
    }

    /**
     * That something records whose trail is brighter than the limit by a margin in mag; none where it is
     * fainter.
     */
    static double ofTrail(double marginMag) {
        return marginMag >= 0 ? StandardNormal.below(marginMag / TrailLimit.SPREAD_MAG) : 0;
    }

    /** A chance in whole percent. */
    static int percent(double chance) {
        return (int) Math.round(CERTAIN * chance);
    }

    /** A chance in hundredths: that of the step it lies in, from nine tenths of it on. */
    static int hundredths(double chance) {
        int step = chance <= 0 ? STEPS.length : (int) (Math.log(chance) / LOG_STEP);
        return step < STEPS.length ? STEPS[step] : 0;
    }
}
