package gloam.planner;

/**
 * The trail limit of stars in an exposure.
 *
 * @param equatorMag   of one on the celestial equator near the frame's centre
 * @param perOctaveMag how much deeper it is for an image of half the speed
 */
record StarLimit(double equatorMag, double perOctaveMag) {

    private static final double SLOPE_MAG = 0.1;

    boolean none() {
        return equatorMag <= TrailLimits.NONE_MAG;
    }

    /** By what stars are told apart: {@link #perOctaveMag} in steps, so that few differ. */
    int slope() {
        return (int) Math.round(Math.max(0, perOctaveMag) / SLOPE_MAG);
    }

    /** Magnitude of a star as if it were one on the equator, by a slope. */
    static float weighed(FrameStars.Seen star, int slope) {
        return weighed(star.magnitude(), star.octavesSlower(), slope);
    }

    /** The same of one whose image is so many octaves slower. */
    static float weighed(float magnitude, float octavesSlower, int slope) {
        return (float) (magnitude - slope * SLOPE_MAG * octavesSlower);
    }
}
