package gloam.trail;

import gloam.units.Interval;
import java.time.Instant;
import java.util.Arrays;
import java.util.function.Function;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * The way of a target over the sky during a span, sampled once and then cheap to follow.
 *
 * <p>The direction without air is interpolated by polynomials through Chebyshev–Lobatto points, a piece for
 * each three hours at most, in barycentric form (Berrut &amp; Trefethen 2004, SIAM Review 46, 501): the sky
 * turns by 45° in that time, so the remainder of the eighth degree, (π/8)⁹ / (2⁷ 9!), is below 1e-11 rad.
 * Refraction, which bends sharply at the horizon, is added after.
 */
final class SkyPath {

    private static final double PIECE_S = 3 * 3600;
    private static final int DEGREE = 8;
    /** The nodes' places in their piece, 0 to 1, and their weights. */
    private static final double[] NODES = new double[DEGREE + 1];
    private static final double[] WEIGHTS = new double[DEGREE + 1];

    static {
        Arrays.setAll(NODES, i -> (1 - Math.cos(Math.PI * i / DEGREE)) / 2);
        Arrays.setAll(WEIGHTS, i -> (i % 2 == 0 ? 1 : -1) * (i == 0 || i == DEGREE ? 0.5 : 1));
    }

    private final Interval span;
    private final Air air;
    private final int pieces;
    private final Vector3D[] samples;

    /** The way during a span of a target whose direction without air is given for each instant. */
    SkyPath(Function<Instant, Vector3D> airless, Air air, Interval span) {
        this.span = span;
        this.air = air;
        this.pieces = (int) Math.ceil(span.seconds() / PIECE_S);
        this.samples = new Vector3D[pieces * DEGREE + 1];
        for (int i = 0; i < samples.length; i++) {
            double sinceS = (i / DEGREE + NODES[i % DEGREE]) * span.seconds() / pieces;
            samples[i] = airless.apply(instant(sinceS));
        }
    }

    Interval span() {
        return span;
    }

    /**
     * The direction in which the target is seen that many seconds after the start of the span; inside the
     * span.
     */
    Vector3D at(double sinceS) {
        return air.lifted(airless(sinceS));
    }

    private Vector3D airless(double sinceS) {
        double inPieces = sinceS / span.seconds() * pieces;
        int piece = Math.max(0, Math.min(pieces - 1, (int) inPieces));
        double share = inPieces - piece;
        double x = 0;
        double y = 0;
        double z = 0;
        double weights = 0;
        for (int i = 0; i <= DEGREE; i++) {
            double offset = share - NODES[i];
            if (offset == 0) {
                return samples[piece * DEGREE + i];
            }
            double weight = WEIGHTS[i] / offset;
            Vector3D sample = samples[piece * DEGREE + i];
            x += weight * sample.getX();
            y += weight * sample.getY();
            z += weight * sample.getZ();
            weights += weight;
        }
        return new Vector3D(x / weights, y / weights, z / weights).normalize();
    }

    /** The instant that many seconds after the start of the span. */
    Instant instant(double sinceS) {
        return span.start().plusNanos(Math.round(sinceS * 1e9));
    }

    /** Seconds from the start of the span to an instant. */
    double since(Instant at) {
        Instant start = span.start();
        return at.getEpochSecond() - start.getEpochSecond() + (at.getNano() - start.getNano()) * 1e-9;
    }
}
