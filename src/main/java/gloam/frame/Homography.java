package gloam.frame;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * How a flat sheet is seen in perspective: x = (a u + b v + c) / (g u + h v + 1), y = (d u + e v + f) / (g u
 * + h v + 1).
 */
public final class Homography {

    private static final int CORNERS = 4;
    private static final int FREE = 8;

    private final double[] terms;

    private Homography(double[] terms) {
        this.terms = terms;
    }

    /**
     * The map that takes four points to four others, each by x and y.
     *
     * @throws IllegalArgumentException when three of them lie on a line
     */
    public static Homography of(double[][] from, double[][] to) {
        RealMatrix equations = new Array2DRowRealMatrix(FREE, FREE);
        RealVector right = new ArrayRealVector(FREE);
        for (int i = 0; i < CORNERS; i++) {
            double u = from[i][0];
            double v = from[i][1];
            for (int axis = 0; axis < 2; axis++) {
                double target = to[i][axis];
                double[] row = new double[FREE];
                row[3 * axis] = u;
                row[3 * axis + 1] = v;
                row[3 * axis + 2] = 1;
                row[6] = -u * target;
                row[7] = -v * target;
                equations.setRow(2 * i + axis, row);
                right.setEntry(2 * i + axis, target);
            }
        }
        LUDecomposition solved = new LUDecomposition(equations, 1e-12);
        if (!solved.getSolver().isNonSingular()) {
            throw new IllegalArgumentException("three corners lie on a line");
        }
        return new Homography(solved.getSolver().solve(right).toArray());
    }

    /** Where a point comes to lie, by x and y. */
    public double[] at(double u, double v) {
        double depth = terms[6] * u + terms[7] * v + 1;
        return new double[] {(terms[0] * u + terms[1] * v + terms[2]) / depth,
            (terms[3] * u + terms[4] * v + terms[5]) / depth};
    }
}
