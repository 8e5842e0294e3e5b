package gloam.film;

import gloam.units.BadInput;
import gloam.units.Range;

/**
 * How dark the developed sheet is after a given progress: toe, straight part and shoulder.
 *
 * <p><b>Model.</b> A logistic curve of density over the logarithm of progress, set by its two ends and by
 * density and slope at the mid-tone. <b>Valid.</b> Any progress from 0 on. <b>Error.</b> Generic, not
 * measured on any film; good for where trails drown in black or white, not for sensitometry.
 * <b>Departures.</b> Real toes and shoulders differ in shape; contrast is taken not to change with time at
 * equal progress.
 *
 * @param densityMin  the lightest it gets, density, 0 to 1
 * @param densityMax  the darkest it gets, density, 0.5 to 4.5
 * @param densityMid  at the mid-tone (progress 1), between the two
 * @param gamma       density gained per tenfold progress at the mid-tone: positive for a negative film, which
 *                    darkens with light, negative for a positive one; 0.1 to 4 in size
 */
public record ToneCurve(double densityMin, double densityMax, double densityMid, double gamma) {

    /** Allowed least densities. */
    public static final Range DENSITY_MIN = new Range("least density", 0, 1, "");
    /** Allowed greatest densities. */
    public static final Range DENSITY_MAX = new Range("greatest density", 0.5, 4.5, "");
    /** Allowed slopes at the mid-tone, whatever their sign. */
    public static final Range GAMMA = new Range("gamma", 0.1, 4, "");

    /**
     * A print that is looked at itself, invented: mid-tone at 18 % reflectance (density 0.74), four stops
     * from near-black to near-white.
     */
    public static final ToneCurve PRINT = new ToneCurve(0.12, 1.8, 0.74, -1.4);

    /**
     * A black-and-white negative: ends invented; density and slope at the mid-tone such that the curve
     * passes the two points of the speed criterion of ISO 6:1993 (0.10 over fog at 0.8/S, 0.80 more at 1.30
     * in log exposure on).
     */
    public static final ToneCurve NEGATIVE = new ToneCurve(0.10, 2.3, 0.704, 0.903);

    /** Refuses numbers outside their ranges with {@link BadInput}. */
    public ToneCurve {
        DENSITY_MIN.check(densityMin);
        DENSITY_MAX.check(densityMax);
        GAMMA.check(Math.abs(gamma));
        if (!(densityMid > densityMin && densityMid < densityMax)) {
            throw new BadInput("mid-tone density " + densityMid + " is not between the least density "
                    + densityMin + " and the greatest " + densityMax + "; give one between");
        }
    }

    /** Density after a progress, 0 (no light) to infinity. */
    public double density(double progress) {
        return densityMin + (densityMax - densityMin) / (1 + Math.pow(progress, -power()) / oddsMid());
    }

    /**
     * Progress that makes a density, the inverse of {@link #density}.
     *
     * <p>A density at or past one of the ends is never left from there or never reached: it is 0 or infinity,
     * whichever end that is.
     */
    public double progress(double density) {
        double overMin = Math.max(0, density - densityMin);
        double underMax = Math.max(0, densityMax - density);
        return Math.pow(overMin / underMax / oddsMid(), 1 / power());
    }

    /** Least progress whose tone differs by a density from blank film: a print's black, a negative's base. */
    public double leastShown(double differenceDensity) {
        return progress(density(0) + Math.signum(gamma) * differenceDensity);
    }

    /** Most progress whose tone differs by a density from its end: a print's white, a negative's black. */
    public double mostShown(double differenceDensity) {
        return progress(density(Double.POSITIVE_INFINITY) - Math.signum(gamma) * differenceDensity);
    }

    /** Power of the progress that the odds of the two ends grow with. */
    private double power() {
        double midShare = midShare();
        return gamma / ((densityMax - densityMin) * midShare * (1 - midShare)) / Math.log(10);
    }

    private double oddsMid() {
        return midShare() / (1 - midShare());
    }

    private double midShare() {
        return (densityMid - densityMin) / (densityMax - densityMin);
    }
}
