package gloam.light;

import gloam.ephemeris.TextResource;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.DoubleBinaryOperator;
import org.hipparchus.analysis.interpolation.BilinearInterpolatingFunction;
import org.hipparchus.analysis.interpolation.BilinearInterpolator;

/**
 * A published table of diffuse light over two angles in degrees, in S10: read in the logarithm, straight in
 * between.
 */
final class DiffuseTable {

    /** Luminance of one star of V 10 a square degree, 27.78 mag/arcsec². */
    private static final double S10_CD_M2 = SkyBrightness.ofMagArcsec2(27.78).cdM2();

    private final BilinearInterpolatingFunction logarithm;

    private DiffuseTable(BilinearInterpolatingFunction logarithm) {
        this.logarithm = logarithm;
    }

    /**
     * The table of a resource.
     *
     * @param resource rows of two angles in degrees and the light there
     * @param blank    what stands for a cell that the paper leaves blank
     */
    static DiffuseTable of(String resource, Blank blank) {
        TreeMap<Double, TreeMap<Double, Double>> rows = new TreeMap<>();
        TextResource.rows(resource, fields -> rows
                .computeIfAbsent(Double.parseDouble(fields[0]), first -> new TreeMap<>())
                .put(Double.parseDouble(fields[1]),
                        fields[2].isEmpty() ? Double.NaN : Double.parseDouble(fields[2])));
        DoubleBinaryOperator printed = (first, second) -> rows.get(first).get(second);
        double[] first = values(rows.keySet());
        double[] second = values(rows.firstEntry().getValue().keySet());
        double[][] logarithms = new double[first.length][second.length];
        for (int i = 0; i < first.length; i++) {
            for (int j = 0; j < second.length; j++) {
                double s10 = printed.applyAsDouble(first[i], second[j]);
                logarithms[i][j] = Math.log(Double.isNaN(s10) ? blank.fill(printed, first[i], second[j])
                        : s10);
            }
        }
        return new DiffuseTable(new BilinearInterpolator().interpolate(first, second, logarithms));
    }

    private static double[] values(Set<Double> places) {
        return places.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Light at a place inside the table, in S10. */
    double s10(double firstDeg, double secondDeg) {
        return Math.exp(logarithm.value(firstDeg, secondDeg));
    }

    /** Luminance of one S10 in cd/m². */
    static double cdM2(double s10) {
        return s10 * S10_CD_M2;
    }

    /** Finds a stand-in for a blank cell among those that are printed. */
    @FunctionalInterface
    interface Blank {

        double fill(DoubleBinaryOperator printed, double firstDeg, double secondDeg);
    }
}
