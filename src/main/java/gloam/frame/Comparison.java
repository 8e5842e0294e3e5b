package gloam.frame;

import gloam.ephemeris.Direction;
import gloam.light.SkyLight;
import gloam.trail.Framing;
import gloam.units.Median;
import gloam.units.Stops;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * A frame's sky beside the computed one.
 *
 * <p><b>Model.</b> The differences of the pieces are a mean, a slope across the frame and what grows with the
 * fourth power of the distance from its middle, by least squares, pieces that lie off by more than three
 * deviations left out once. The slope is a sky that the model does not have, a town's glow or a haze; the
 * last is a lens that loses more in its corners than it is said to. <b>Valid.</b> Eight pieces or more.
 * <b>Error.</b> Told with each. <b>Departures.</b> What all pieces share is in the mean alone.
 *
 * @param brighterMag     by how much the frame's sky is brighter than the model's, in mag; minus is darker
 * @param modelErrorMag   one standard deviation of the model, in mag
 * @param slope           how that changes across the frame, if there are pieces enough
 */
public record Comparison(double brighterMag, double modelErrorMag, Optional<Slope> slope) {

    private static final int LEAST_PIECES = 8;
    private static final double OUTLYING = 3;
    private static final double LEAST_DEVIATION_MAG = 0.02;
    private static final double LEAST_SLOPE_MAG = 0.15;
    /** A sky bends by that much over a wide frame; common practice, no source. */
    private static final double LEAST_CORNERS_MAG = 0.3;

    /**
     * How the difference changes across a frame.
     *
     * @param towards       where at the frame's edge the sky is brightest beside the model
     * @param thereMag      by how much it is brighter there
     * @param oppositeMag   by how much it is brighter at the opposite edge
     * @param errorMag      one standard deviation of half of what lies between the two
     * @param cornersMag    by how much the corners are brighter than the lens's law has them; minus is darker
     * @param cornersErrorMag one standard deviation of that
     */
    public record Slope(Direction towards, double thereMag, double oppositeMag, double errorMag,
                        double cornersMag, double cornersErrorMag) {

        /** Whether the slope is more than chance. */
        public boolean clear() {
            return thereMag - oppositeMag > Math.max(LEAST_SLOPE_MAG, 2 * OUTLYING * errorMag);
        }

        /** Whether the lens loses more in the corners than chance and the sky's own shape would have it. */
        public boolean cornersClear() {
            return -cornersMag > Math.max(LEAST_CORNERS_MAG, OUTLYING * cornersErrorMag);
        }
    }

    /** By how much a piece is brighter than a model says, in mag. */
    public static double brighterMag(Patch patch, SkyLight.Sample model) {
        return model.total().magArcsec2() - patch.brightness().magArcsec2();
    }

    /** Compares pieces with what the model has for each. */
    public static Comparison of(Framing framing, List<Patch> patches, List<SkyLight.Sample> model) {
        double[] brighter = new double[patches.size()];
        Arrays.setAll(brighter, i -> brighterMag(patches.get(i), model.get(i)));
        double spread = Stops.MAG * Median.of(model.stream()
                .mapToDouble(SkyLight.Sample::spreadStops).toArray());
        return new Comparison(Median.of(brighter), spread,
                patches.size() < LEAST_PIECES ? Optional.empty() : slope(framing, patches, brighter));
    }

    private static Optional<Slope> slope(Framing framing, List<Patch> patches, double[] brighter) {
        double widthMm = framing.camera().frame().widthMm();
        double heightMm = framing.camera().frame().heightMm();
        double cornerMm = framing.camera().frame().halfDiagonalMm();
        double[][] terms = new double[patches.size()][];
        for (int i = 0; i < terms.length; i++) {
            double x = (patches.get(i).xShare() - 0.5) * widthMm / cornerMm;
            double y = (0.5 - patches.get(i).yShare()) * heightMm / cornerMm;
            terms[i] = new double[] {1, x, y, Math.pow(x * x + y * y, 2)};
        }
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < terms.length; i++) {
            all.add(i);
        }
        double[] first = left(terms, brighter, solved(terms, brighter, all));
        double deviation = Math.max(LEAST_DEVIATION_MAG, Median.scatter(first, 0));
        List<Integer> kept = all.stream().filter(i -> Math.abs(first[i]) <= OUTLYING * deviation).toList();
        RealMatrix used = rows(terms, kept);
        if (kept.size() < LEAST_PIECES || !new QRDecomposition(used, 1e-9).getSolver().isNonSingular()) {
            return Optional.empty();
        }
        RealVector best = solved(terms, brighter, kept);
        double[] left = left(terms, brighter, best);
        double square = kept.stream().mapToDouble(i -> left[i] * left[i]).sum()
                / (kept.size() - best.getDimension() + 1e-9);
        RealMatrix covariance = MatrixUtils.inverse(used.transposeMultiply(used));
        double sigma = Math.max(LEAST_DEVIATION_MAG, Math.sqrt(square));
        double steep = Math.hypot(best.getEntry(1), best.getEntry(2));
        double along = steep == 0 ? 1 : best.getEntry(1) / steep;
        double up = steep == 0 ? 0 : best.getEntry(2) / steep;
        double edge = Math.min(along == 0 ? 1e9 : widthMm / 2 / Math.abs(along),
                up == 0 ? 1e9 : heightMm / 2 / Math.abs(up));
        double half = steep * edge / cornerMm;
        return Optional.of(new Slope(framing.toSky(along * edge, up * edge), best.getEntry(0) + half,
                best.getEntry(0) - half, sigma * Math.sqrt(along * along * covariance.getEntry(1, 1)
                + up * up * covariance.getEntry(2, 2)) * edge / cornerMm, best.getEntry(3),
                sigma * Math.sqrt(covariance.getEntry(3, 3))));
    }

    private static RealMatrix rows(double[][] terms, List<Integer> kept) {
        return new Array2DRowRealMatrix(kept.stream().map(i -> terms[i]).toArray(double[][]::new));
    }

    private static RealVector solved(double[][] terms, double[] brighter, List<Integer> kept) {
        RealMatrix used = rows(terms, kept);
        QRDecomposition decomposition = new QRDecomposition(used, 1e-9);
        return decomposition.getSolver().isNonSingular() ? decomposition.getSolver()
                .solve(new ArrayRealVector(
                kept.stream().mapToDouble(i -> brighter[i]).toArray())) : new ArrayRealVector(4);
    }

    private static double[] left(double[][] terms, double[] brighter, RealVector point) {
        double[] left = new double[terms.length];
        Arrays.setAll(left, i -> brighter[i] - new ArrayRealVector(terms[i], false).dotProduct(point));
        return left;
    }
}
