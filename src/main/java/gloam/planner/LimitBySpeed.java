package gloam.planner;

import gloam.exposure.TrailLimit;

/**
 * The trail limit of an exposure for images of any speed: straight in the logarithm of the speed through two computed
 * values, which a power-law film follows exactly.
 *
 * @param atEquatorMag  for a star on the celestial equator, without loss in the air; negative infinity where none shows
 * @param perOctaveMag  how much deeper it is for an image of half the speed
 */
record LimitBySpeed(double atEquatorMag, double perOctaveMag) {

    private static final double OCTAVES = 2;

    /** The limit in given circumstances, whatever speed and loss they state. */
    static LimitBySpeed of(TrailLimit.Circumstances on, double equatorMmS) {
        double fastMag = TrailLimit.magnitude(at(on, equatorMmS));
        double slowMag = TrailLimit.magnitude(at(on, equatorMmS * Math.pow(2, -OCTAVES)));
        return new LimitBySpeed(fastMag, Double.isInfinite(fastMag) ? 0 : (slowMag - fastMag) / OCTAVES);
    }

    private static TrailLimit.Circumstances at(TrailLimit.Circumstances on, double speedMmS) {
        return new TrailLimit.Circumstances(on.film(), on.lens(), on.fNumber(), on.exposureS(), on.skyProgress(),
                on.skyIlluminanceLx(), speedMmS, 0);
    }

    /** Faintest V magnitude, dimmed by the air, that leaves a visible trail; by octaves slower than at the equator. */
    double magnitude(double octavesSlower) {
        return atEquatorMag + perOctaveMag * octavesSlower;
    }
}
