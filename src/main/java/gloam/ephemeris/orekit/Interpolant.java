package gloam.ephemeris.orekit;

import java.util.Arrays;
import java.util.function.DoubleFunction;
import org.hipparchus.analysis.interpolation.HermiteInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialFunction;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** A vector that changes with time: polynomials through samples at the Chebyshev points of a span. */
final class Interpolant {

    private final double middleS;
    private final double halfS;
    private final PolynomialFunction[] components;
    private final PolynomialFunction[] slopes;

    private Interpolant(double middleS, double halfS, PolynomialFunction... components) {
        this.middleS = middleS;
        this.halfS = halfS;
        this.components = components;
        this.slopes = Arrays.stream(components).map(PolynomialFunction::polynomialDerivative)
                .toArray(PolynomialFunction[]::new);
    }

    /** The interpolant over a span from samples at so many times. */
    static Interpolant through(double startS, double endS, int points, DoubleFunction<Vector3D> samples) {
        double middleS = (startS + endS) / 2;
        double halfS = (endS - startS) / 2;
        HermiteInterpolator interpolator = new HermiteInterpolator();
        for (int point = 0; point < points; point++) {
            double x = Math.cos(Math.PI * (2 * point + 1) / (2 * points));
            interpolator.addSamplePoint(x, samples.apply(middleS + halfS * x).toArray());
        }
        return new Interpolant(middleS, halfS, interpolator.getPolynomials());
    }

    /** The vector at a time within the span. */
    Vector3D value(double atS) {
        double x = (atS - middleS) / halfS;
        return new Vector3D(components[0].value(x), components[1].value(x), components[2].value(x));
    }

    /** Its change a second. */
    Vector3D rate(double atS) {
        double x = (atS - middleS) / halfS;
        return new Vector3D(slopes[0].value(x), slopes[1].value(x), slopes[2].value(x))
                .scalarMultiply(1 / halfS);
    }
}
