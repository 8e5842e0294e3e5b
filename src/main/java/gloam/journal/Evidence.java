package gloam.journal;

import gloam.units.StandardNormal;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * What one observation of a sheet says about the value computed for it: its tone in stops, or the faintest
 * magnitude that leaves a trail.
 *
 * <p><b>Model.</b> A tone in words is an ordered probit: the computed tone with a normal error, between the
 * word's bounds. A tone in stops is normal about the computed one. The faintest star noticed is a lower
 * bound: the film reaches at least that far, fainter ones may have been passed over; the faintest trail that
 * all trails of a scan show is normal about the computed one. One observation in
 * twenty is taken to be about anything, so that a wrong note does not bend the curve. <b>Valid.</b> Sound
 * sheets.
 * <b>Error.</b> That of the spreads, which are common sense without a source. <b>Departures.</b> The
 * faintest star and the tone of one sheet count as independent.
 *
 * @param from   least value that the observation stands for
 * @param upTo   greatest one; the same as the least if a value was measured
 * @param spread standard deviation of what is observed about the computed value
 * @param stray  chance of the observation, or its density, if the note is wrong
 */
record Evidence(double from, double upTo, double spread, double stray) {

    /** Standard deviation, in stops, of a tone as somebody judges it about the sheet's own; no source. */
    static final double EYE_STOPS = 0.45;

    private static final NormalDistribution STANDARD_NORMAL = new NormalDistribution();
    private static final double STRAY_SHARE = 0.05;
    private static final double STRAY_TONES_STOPS = 10;
    private static final double STRAY_LIMITS_MAG = 10;
    /** Of a bound, which already lies one standard deviation of the scan off; no source. */
    private static final double BOUND_STOPS = 0.3;
    private static final double SIGHTING_SPREAD_MAG = 0.5;
    private static final double NONE = 1e-12;

    /** What a word says. */
    static Evidence of(ToneWord word) {
        return new Evidence(word.aboveStops(), word.upToStops(), EYE_STOPS, 1.0 / ToneWord.values().length);
    }

    /** What a tone measured to a standard deviation says. */
    static Evidence ofTone(double stops, double spreadStops) {
        return new Evidence(stops, stops, spreadStops, 1 / STRAY_TONES_STOPS);
    }

    /** What the faintest magnitude noticed says about the faintest that there is on the sheet. */
    static Evidence ofFaintest(double magnitude) {
        return new Evidence(magnitude, Double.POSITIVE_INFINITY, SIGHTING_SPREAD_MAG, 0.5);
    }

    /** What the faintest trail read off a scan to a standard deviation says. */
    static Evidence ofLimit(double magnitude, double spreadMag) {
        return new Evidence(magnitude, magnitude, spreadMag, 1 / STRAY_LIMITS_MAG);
    }

    /** What a tone read off a scan says. */
    static Evidence of(ScanReading.Tone tone) {
        return switch (tone.bound()) {
            case NONE -> ofTone(tone.stops(), Math.max(Verdict.SPREAD.least(), tone.errorStops()));
            case AT_MOST -> new Evidence(Double.NEGATIVE_INFINITY, tone.stops(), BOUND_STOPS, 0.5);
            case AT_LEAST -> new Evidence(tone.stops(), Double.POSITIVE_INFINITY, BOUND_STOPS, 0.5);
        };
    }

    /** The same observation, the computed value itself being that uncertain besides. */
    Evidence blurred(double standardDeviation) {
        return new Evidence(from, upTo, Math.hypot(spread, standardDeviation), stray);
    }

    /** Chance of the observation, or its density, for a computed value. */
    double likelihood(double value) {
        return (1 - STRAY_SHARE) * sound(value) + STRAY_SHARE * stray;
    }

    /** Chance that the note is wrong, were that the value. */
    double strayChance(double value) {
        return STRAY_SHARE * stray / likelihood(value);
    }

    /** How the logarithm of the likelihood runs about a value. */
    Slope slope(double value) {
        double low = (from - value) / spread;
        double high = (upTo - value) / spread;
        double chance = sound(value);
        double all = likelihood(value);
        if (chance < NONE) {
            return new Slope(Math.log(all), 0, 0);
        }
        double change = measured() ? chance * low / spread : (density(low) - density(high)) / spread;
        double bend = measured() ? chance * (low * low - 1) / spread / spread
                : (moment(low) - moment(high)) / spread / spread;
        return new Slope(Math.log(all), (1 - STRAY_SHARE) * change / all,
                Math.max(0, (1 - STRAY_SHARE) * (change * change / chance - bend) / all));
    }

    private boolean measured() {
        return from == upTo;
    }

    private double sound(double value) {
        double low = (from - value) / spread;
        return measured() ? density(low) / spread
                : StandardNormal.below((upTo - value) / spread) - StandardNormal.below(low);
    }

    private static double density(double sds) {
        return Double.isInfinite(sds) ? 0 : STANDARD_NORMAL.density(sds);
    }

    private static double moment(double sds) {
        return Double.isInfinite(sds) ? 0 : sds * density(sds);
    }

    /**
     * A log density about a point.
     *
     * @param log       its value
     * @param gradient  its slope
     * @param curvature how fast the slope falls, never negative: of a mixture that of its sound part alone
     */
    record Slope(double log, double gradient, double curvature) {
    }
}
