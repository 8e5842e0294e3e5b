package gloam.light;

import gloam.ephemeris.TextResource;
import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleBinaryOperator;
import org.hipparchus.analysis.interpolation.BilinearInterpolatingFunction;
import org.hipparchus.analysis.interpolation.BilinearInterpolator;

/**
 * A published table of diffuse light over two angles in degrees, in S10: read in the logarithm, straight in
 * between.
 */
final class DiffuseTable {

    /** Magnitudes per square second of arc of one star of V 10 a square degree. */
    private static final double S10_MAG_ARCSEC2 = 27.78;

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
        List<double[]> rows = TextResource.rows(resource,
                fields -> new double[] {Double.parseDouble(fields[0]),
            Double.parseDouble(fields[1]), fields[2].isEmpty() ? Double.NaN : Double.parseDouble(fields[2])});
        double[] first = axis(rows, 0);
        double[] second = axis(rows, 1);
        DoubleBinaryOperator printed = (x, y) -> rows.stream().filter(row -> row[0] == x && row[1] == y)
                .mapToDouble(row -> row[2]).findFirst().orElseThrow();
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

    private static double[] axis(List<double[]> rows, int column) {
        TreeSet<Double> places = new TreeSet<>();
        rows.forEach(row -> places.add(row[column]));
        return places.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Light at a place inside the table, in S10. */
    double s10(double firstDeg, double secondDeg) {
        return Math.exp(logarithm.value(firstDeg, secondDeg));
    }

    /** Luminance of one S10 in cd/m². */
    static double cdM2(double s10) {
        return s10 * SkyBrightness.ofMagArcsec2(S10_MAG_ARCSEC2).cdM2();
    }

    /** Finds a stand-in for a blank cell among those that are printed. */
    @FunctionalInterface
    interface Blank {

        double fill(DoubleBinaryOperator printed, double firstDeg, double secondDeg);
    }
}
