package gloam.film;

import gloam.units.Range;
import java.util.List;

/**
 * A film's loss of speed in long exposures: the metered time against the time that must be given.
 *
 * <p>The metered time says how dim the light is: it is the time after which that light would have delivered
 * the mid-tone's exposure. Every law lengthens or keeps it, and grows with it.
 */
public sealed interface Reciprocity
        permits Reciprocity.None, Reciprocity.PowerLaw, Reciprocity.AddedPower, Reciprocity.Catenary,
        FittedReciprocity, ReciprocityTable {

    /** Allowed exponents P of tc = tm^P: from no failure to the steepest one that silver halides show. */
    Range EXPONENT = new Range("reciprocity exponent", 1, 2, "");
    /** Allowed Schwarzschild exponents p of I·t^p, where P = 1/p. */
    Range SCHWARZSCHILD_P = new Range("schwarzschild-p", 0.5, 1, "");
    /** Allowed onsets of a power law. */
    Range ONSET = new Range("reciprocity onset", 1e-3, 1e4, "s");
    /** Allowed added times at one metered second. */
    Range ADDED = new Range("added time at 1 s", 0, 10, "s");
    /** Allowed bends of a catenary; 1 + bend is the exponent it tends to. */
    Range BEND = new Range("catenary bend", 0, 1, "");
    /** Allowed times at which a film works best, or for which its speed is stated. */
    Range BEST_TIME = new Range("catenary time", 1e-6, 1e6, "s");

    /**
     * Metered time up to which a formula is trusted: makers fit and publish to about 100 s. A table reaches
     * as far as its last point.
     */
    double PUBLISHED_TO_S = 100;

    /** Share of a time that counts as none when a law is read backwards. */
    double ROUNDING = 1e-13;

    /** No failure at any time: corrected is metered. */
    static Reciprocity none() {
        return new None();
    }

    /** The power law of exponent P (1 to 2) from a metered time on. */
    static Reciprocity power(double exponent, double fromS) {
        return new PowerLaw(exponent, fromS);
    }

    /** The power law by the exponent p (0.5 to 1) of equal blackening I·t^p, from a metered time on. */
    static Reciprocity schwarzschild(double schwarzschildP, double fromS) {
        return new PowerLaw(1 / SCHWARZSCHILD_P.check(schwarzschildP), fromS);
    }

    /** The law through published points. */
    static Reciprocity table(List<ReciprocityTable.Point> points) {
        return new ReciprocityTable(points);
    }

    /** Corrected time in s for a metered time in s, 0 to infinity; never less than it, growing with it. */
    double correctedS(double meteredS);

    /** Local exponent d ln tc / d ln tm; where the law has a corner, that of longer times. */
    double exponentAt(double meteredS);

    /** Metered time in s up to which the source of the law covers it; infinite for no failure. */
    double coveredToS();

    /**
     * Metered time in s for a corrected time in s, 0 to infinity: the inverse of {@link #correctedS}.
     *
     * <p>By Newton's steps down the law in log time against log time, where a formula bends upwards only, so
     * that no step goes too far.
     */
    default double meteredS(double correctedS) {
        double meteredS = correctedS;
        double tooLongBy = tooLongBy(meteredS, correctedS);
        while (tooLongBy > ROUNDING) {
            meteredS *= Math.exp(-tooLongBy / exponentAt(meteredS));
            tooLongBy = tooLongBy(meteredS, correctedS);
        }
        return meteredS;
    }

    private double tooLongBy(double meteredS, double correctedS) {
        return correctedS > 0 && correctedS < Double.POSITIVE_INFINITY
                ? Math.log(correctedS(meteredS) / correctedS) : 0;
    }

    /** Whether the law is only continued at that metered time, beyond what its source covers. */
    default boolean extrapolated(double meteredS) {
        return meteredS > coveredToS();
    }

    /** No failure at any time. */
    record None() implements Reciprocity {
        @Override
        public double correctedS(double meteredS) {
            return meteredS;
        }

        @Override
        public double meteredS(double correctedS) {
            return correctedS;
        }

        @Override
        public double exponentAt(double meteredS) {
            return 1;
        }

        @Override
        public double coveredToS() {
            return Double.POSITIVE_INFINITY;
        }
    }

    /**
     * Power law with an onset: tc = from·(tm/from)^P beyond it, tc = tm up to it; without a step.
     *
     * <p>With an onset of 1 s this is tc = tm^P as makers of black-and-white film print it.
     *
     * @param exponent P, 1 to 2
     * @param fromS    the onset in s
     */
    record PowerLaw(double exponent, double fromS) implements Reciprocity {

        /** Refuses numbers outside their ranges with {@link gloam.units.BadInput}. */
        public PowerLaw {
            EXPONENT.check(exponent);
            ONSET.check(fromS);
        }

        @Override
        public double correctedS(double meteredS) {
            return meteredS <= fromS ? meteredS : fromS * Math.pow(meteredS / fromS, exponent);
        }

        @Override
        public double meteredS(double correctedS) {
            return correctedS <= fromS ? correctedS : fromS * Math.pow(correctedS / fromS, 1 / exponent);
        }

        @Override
        public double exponentAt(double meteredS) {
            return meteredS < fromS ? 1 : exponent;
        }

        @Override
        public double coveredToS() {
            return PUBLISHED_TO_S;
        }
    }

    /**
     * Added power: tc = tm + a·tm^b, smooth without an onset (Gainer, Photo Techniques 24-5, 2003).
     *
     * @param addedAtOneSecondS a, the correction at one metered second, in s
     * @param exponent          b, 1 to 2, the exponent the law tends to; 1.62 fits most black-and-white films
     */
    record AddedPower(double addedAtOneSecondS, double exponent) implements Reciprocity {

        /** Refuses numbers outside their ranges with {@link gloam.units.BadInput}. */
        public AddedPower {
            ADDED.check(addedAtOneSecondS);
            EXPONENT.check(exponent);
        }

        @Override
        public double correctedS(double meteredS) {
            return meteredS + addedAtOneSecondS * Math.pow(meteredS, exponent);
        }

        @Override
        public double exponentAt(double meteredS) {
            double addedShare = addedAtOneSecondS * Math.pow(meteredS, exponent - 1);
            return 1 + (exponent - 1) / (1 + 1 / addedShare);
        }

        @Override
        public double coveredToS() {
            return PUBLISHED_TO_S;
        }
    }

    /**
     * Catenary of Kron and Halm: tc/tm = cosh(a ln(tm/t0)) / cosh(a ln(tref/t0)), where that is not below 1.
     *
     * <p>Loses speed on both sides of the best time; tends to the exponent 1 + a in dim light.
     *
     * @param bend       a, 0 to 1
     * @param bestS      t0, the metered time at which the film needs least exposure, in s
     * @param referenceS tref, the metered time for which the film's speed is stated, in s
     */
    record Catenary(double bend, double bestS, double referenceS) implements Reciprocity {

        /** Refuses numbers outside their ranges with {@link gloam.units.BadInput}. */
        public Catenary {
            BEND.check(bend);
            BEST_TIME.check(bestS);
            BEST_TIME.check(referenceS);
        }

        @Override
        public double correctedS(double meteredS) {
            return meteredS == 0 ? 0 : meteredS * Math.max(1, lengthening(meteredS));
        }

        @Override
        public double exponentAt(double meteredS) {
            return lengthening(meteredS) < 1 ? 1 : 1 + bend * Math.tanh(bend * Math.log(meteredS / bestS));
        }

        @Override
        public double coveredToS() {
            return PUBLISHED_TO_S;
        }

        private double lengthening(double meteredS) {
            return Math.cosh(bend * Math.log(meteredS / bestS))
                    / Math.cosh(bend * Math.log(referenceS / bestS));
        }
    }
}
