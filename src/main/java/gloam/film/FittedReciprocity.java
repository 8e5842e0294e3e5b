package gloam.film;

import gloam.units.Range;
import gloam.units.Stops;

/**
 * A published law whose failure is made larger or smaller: ln(tc/tm) times a scale.
 *
 * <p>A power law stays one, of exponent 1 + scale·(P − 1). Where the published law does not fail, nor does
 * this.
 *
 * @param published  the law that is scaled
 * @param scale      1 for the published failure, 0.05 to 20
 * @param coveredToS metered time in s up to which it is backed by the source of the law or by judged sheets
 * @param doubt      what the judged sheets leave open
 */
public record FittedReciprocity(Reciprocity published, double scale, double coveredToS, Doubt doubt)
        implements Reciprocity {

    /** Allowed scales. */
    public static final Range SCALE = new Range("scale of the reciprocity failure", 0.05, 20, "");

    /**
     * How well speed and failure are known together.
     *
     * @param speedStops  standard deviation of the film's speed offset in stops
     * @param scale       standard deviation of the failure's scale
     * @param correlation of the two, -1 to 1
     */
    public record Doubt(double speedStops, double scale, double correlation) {

        /** A film taken as it is. */
        public static final Doubt NONE = new Doubt(0, 0, 0);
    }

    /** Refuses a scale outside its range with {@link gloam.units.BadInput}. */
    public FittedReciprocity {
        SCALE.check(scale);
    }

    @Override
    public double correctedS(double meteredS) {
        return meteredS == 0 ? 0 : meteredS * Math.pow(published.correctedS(meteredS) / meteredS, scale);
    }

    @Override
    public double exponentAt(double meteredS) {
        return 1 + scale * (published.exponentAt(meteredS) - 1);
    }

    /** Standard deviation in stops of the time to the mid-tone that the doubt makes, to first order. */
    public double doubtStops(double meteredS) {
        double speed = exponentAt(meteredS) * doubt.speedStops;
        double failure = Stops.between(meteredS, published.correctedS(meteredS)) * doubt.scale;
        return Math.sqrt(Math.max(0, speed * speed + failure * failure + 2 * doubt.correlation * speed
                * failure));
    }
}
