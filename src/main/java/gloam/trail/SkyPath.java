package gloam.trail;

import gloam.units.Interpolant;
import gloam.units.Interval;
import java.time.Instant;
import java.util.function.Function;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * The way of a target over the sky during a span, sampled once and then cheap to follow.
 *
 * <p>The direction without air is interpolated, a piece for each hour at most: the sky turns by 15° in an hour, so
 * the remainder of the eighth degree is below 1e-9 rad. Refraction, which bends sharply at the horizon, is added after.
 */
final class SkyPath {

    private static final double MOST_PIECE_S = 3600;
    private static final int POINTS = 9;

    private final Interval span;
    private final Air air;
    private final double pieceS;
    private final Interpolant[] pieces;

    /** The way during a span of a target whose direction without air is given for each instant. */
    SkyPath(Function<Instant, Vector3D> airless, Air air, Interval span) {
        this.span = span;
        this.air = air;
        this.pieces = new Interpolant[(int) Math.ceil(span.seconds() / MOST_PIECE_S)];
        this.pieceS = span.seconds() / pieces.length;
        for (int i = 0; i < pieces.length; i++) {
            pieces[i] = Interpolant.through(i * pieceS, (i + 1) * pieceS, POINTS,
                    sinceS -> airless.apply(instant(sinceS)));
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
        int piece = (int) (sinceS / pieceS);
        return pieces[Math.max(0, Math.min(pieces.length - 1, piece))].value(sinceS).normalize();
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
