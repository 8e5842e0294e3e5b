package gloam.film;

import gloam.units.Range;

/**
 * A published law whose failure is made larger or smaller: ln(tc/tm) times a scale.
 *
 * <p>A power law stays one, of exponent 1 + scale·(P − 1). Where the published law does not fail, nor does this.
 *
 * @param published  the law that is scaled
 * @param scale      1 for the published failure, 0.05 to 20
 * @param coveredToS metered time in s up to which it is backed by the source of the law or by judged sheets
 */
public record FittedReciprocity(Reciprocity published, double scale, double coveredToS) implements Reciprocity {

    /** Allowed scales. */
    public static final Range SCALE = new Range("scale of the reciprocity failure", 0.05, 20, "");

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
}
