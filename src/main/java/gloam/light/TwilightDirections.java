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

    /** Logarithms by dust and depression. */
    private final BilinearInterpolatingFunction[][] logarithms =
            new BilinearInterpolatingFunction[DUST_DEPTHS.length][DEEPEST_DEG + 1];

    TwilightDirections() {
        List<double[]> rows = TextResource.rows("/gloam/light/twilight.tsv", fields ->
                Arrays.stream(fields).skip(KEYS).mapToDouble(field -> Math.log(Double.parseDouble(field)))
                .toArray());
        int first = 0;
        for (BilinearInterpolatingFunction[] byDepression : logarithms) {
            for (int depression = 0; depression <= DEEPEST_DEG; depression++) {
                byDepression[depression] = new BilinearInterpolatingFunction(ALTITUDES_DEG, AZIMUTHS_DEG,
                        rows.subList(first, first + ALTITUDES_DEG.length).toArray(double[][]::new));
                first += ALTITUDES_DEG.length;
            }
        }
    }

    /** The sky for one depression of the Sun and depth of dust. */
    Sky sky(double depressionDeg, double dustDepth) {
        double step = Math.max(0, Math.min(DEEPEST_DEG, depressionDeg));
        int above = Math.min(DEEPEST_DEG - 1, (int) step);
        double dust = Math.max(0, Math.min(1,
                (dustDepth - DUST_DEPTHS[0]) / (DUST_DEPTHS[1] - DUST_DEPTHS[0])));
        return new Sky(logarithms, above, step - above, dust);
    }

    /**
     * A whole sky.
     *
     * @param deeper how far it lies from the depression above it to the next, 0 to 1
     * @param dust   how far from the least dust to the most
     */
    record Sky(BilinearInterpolatingFunction[][] logarithms, int above, double deeper, double dust) {

        /** Luminance of a direction as a multiple of the zenith's with the Sun 3° down. */
        double relative(double altitudeDeg, double azimuthFromSunDeg) {
            double heldDeg = Math.max(ALTITUDES_DEG[0], altitudeDeg);
            return Math.exp(between(deeper, at(above, heldDeg, azimuthFromSunDeg),
                    at(above + 1, heldDeg, azimuthFromSunDeg)));
        }

        private double at(int depression, double altitudeDeg, double azimuthFromSunDeg) {
            return between(dust, logarithms[0][depression].value(altitudeDeg, azimuthFromSunDeg),
                    logarithms[1][depression].value(altitudeDeg, azimuthFromSunDeg));
        }

        private static double between(double share, double from, double to) {
            return from + share * (to - from);
        }
    }
}
