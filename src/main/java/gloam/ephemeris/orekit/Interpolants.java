package gloam.ephemeris.orekit;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleFunction;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A vector that changes with time, span after span of equal length; each span is sampled when it is first
 * asked for and kept. May be asked by many threads at once.
 */
final class Interpolants {

    private final double originS;
    private final double spanS;
    private final int points;
    private final DoubleFunction<Vector3D> samples;
    private final Map<Integer, Interpolant> known = new ConcurrentHashMap<>();

    /**
     * Interpolants of samples.
     *
     * @param originS where a span begins, in seconds
     * @param spanS   how long each is
     * @param points  samples a span
     * @param samples the vector at a time
     */
    Interpolants(double originS, double spanS, int points, DoubleFunction<Vector3D> samples) {
        this.originS = originS;
        this.spanS = spanS;
        this.points = points;
        this.samples = samples;
    }

    /** The interpolant whose span holds a time. */
    Interpolant at(double atS) {
        int span = (int) Math.floor((atS - originS) / spanS);
        Interpolant there = known.get(span);
        return there != null ? there : known.computeIfAbsent(span, this::sampled);
    }

    private Interpolant sampled(int span) {
        double startS = originS + span * spanS;
        return Interpolant.through(startS, startS + spanS, points, samples);
    }
}
