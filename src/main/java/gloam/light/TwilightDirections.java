package gloam.light;

import gloam.ephemeris.TextResource;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.analysis.interpolation.BilinearInterpolatingFunction;

/** Table of twilight scattered once, read in the logarithm, straight in between; beyond its ends as there. */
final class TwilightDirections {

    private static final double[] DUST_DEPTHS = {0.03, 0.15};
    private static final double[] ALTITUDES_DEG = {2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28,
        30, 33, 36, 40, 45, 50, 60, 70, 80, 90};
    private static final double[] AZIMUTHS_DEG = {0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100, 110, 120,
        130, 140, 150, 160, 170, 180};
    /** The last depression of the Sun in degrees, from 0 in steps of one. */
    static final int DEEPEST_DEG = 12;
    private static final int KEYS = 3;

    /** Logarithms by dust, depression and altitude, then azimuth. */
    private final double[][] rows;

    TwilightDirections() {
        List<double[]> read = TextResource.rows("/gloam/light/twilight.tsv", fields ->
                Arrays.stream(fields).skip(KEYS).mapToDouble(field -> Math.log(Double.parseDouble(field)))
                .toArray());
        this.rows = read.toArray(double[][]::new);
    }

    /** The sky for one depression of the Sun and depth of dust. */
    Sky sky(double depressionDeg, double dustDepth) {
        double step = Math.max(0, Math.min(DEEPEST_DEG, depressionDeg));
        int above = Math.min(DEEPEST_DEG - 1, (int) step);
        double dust = Math.max(0, Math.min(1,
                (dustDepth - DUST_DEPTHS[0]) / (DUST_DEPTHS[1] - DUST_DEPTHS[0])));
        double[][] logarithms = new double[ALTITUDES_DEG.length][AZIMUTHS_DEG.length];
        for (int altitude = 0; altitude < ALTITUDES_DEG.length; altitude++) {
            for (int azimuth = 0; azimuth < AZIMUTHS_DEG.length; azimuth++) {
                logarithms[altitude][azimuth] = between(step - above,
                        between(dust, at(0, above, altitude)[azimuth], at(1, above, altitude)[azimuth]),
                        between(dust, at(0, above + 1, altitude)[azimuth],
                        at(1, above + 1, altitude)[azimuth]));
            }
        }
        return new Sky(new BilinearInterpolatingFunction(ALTITUDES_DEG, AZIMUTHS_DEG, logarithms));
    }

    private double[] at(int dust, int depression, int altitude) {
        return rows[(dust * (DEEPEST_DEG + 1) + depression) * ALTITUDES_DEG.length + altitude];
    }

    private static double between(double share, double from, double to) {
        return from + share * (to - from);
    }

    /** A whole sky. */
    record Sky(BilinearInterpolatingFunction logarithm) {

        /** Luminance of a direction as a multiple of the zenith's with the Sun 3° down. */
        double relative(double altitudeDeg, double azimuthFromSunDeg) {
            return Math.exp(logarithm.value(Math.max(ALTITUDES_DEG[0], altitudeDeg), azimuthFromSunDeg));
        }
    }
}
