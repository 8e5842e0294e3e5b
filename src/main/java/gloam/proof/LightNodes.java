package gloam.proof;

import gloam.ephemeris.Direction;
import gloam.exposure.FilmPlane;
import gloam.exposure.LightCurve;
import gloam.exposure.ProgressCurve;
import gloam.light.SkyBrightness;
import gloam.trail.Framing;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What wide light makes of a sheet: progress of each layer at nodes spread evenly over the frame, straight in
 * between.
 */
final class LightNodes {

    private static final int LEAST_STEPS = 8;

    private final int intervals;
    private final double[][] progress;

    private LightNodes(int intervals, double[][] progress) {
        this.intervals = intervals;
        this.progress = progress;
    }

    /**
     * How finely light is looked up.
     *
     * @param intervals how many between the nodes along each side of the frame
     * @param step      time from one look to the next
     */
    record Fineness(int intervals, Duration step) {

        /** Enough for a sky that varies over tens of degrees and minutes: see the test against twice as fine. */
        static final Fineness SMOOTH = new Fineness(32, Duration.ofMinutes(5));
        /** For a frame with the Moon in it or near, whose glow varies from degree to degree as it passes. */
        static final Fineness MOON = new Fineness(64, Duration.ofMinutes(2));

        Duration stepOf(Interval opening) {
            Duration most = opening.lasts().dividedBy(LEAST_STEPS);
            return most.compareTo(step) < 0 ? most.plusMillis(1) : step;
        }
    }

    static LightNodes of(SheetSetup setup, List<Layer> layers, WideLight light, Fineness fineness) {
        int nodes = fineness.intervals + 1;
        double[][] progress = new double[layers.size()][nodes * nodes];
        double widthMm = setup.framing().camera().frame().widthMm();
        double heightMm = setup.framing().camera().frame().heightMm();
        for (int node = 0; node < nodes * nodes; node++) {
            double xMm = widthMm * ((double) (node % nodes) / fineness.intervals - 0.5);
            double yMm = heightMm * (0.5 - (double) (node / nodes) / fineness.intervals);
            double[] here = at(setup, layers, light, fineness, new Framing.Point(xMm, yMm));
            for (int layer = 0; layer < here.length; layer++) {
                progress[layer][node] = here[layer];
            }
        }
        return new LightNodes(fineness.intervals, progress);
    }

    /** Progress of each layer at one point of the sheet. */
    static double[] at(SheetSetup setup, List<Layer> layers, WideLight light, Fineness fineness, Framing.Point point) {
        Direction direction = setup.framing().toSky(point.xMm(), point.yMm());
        Map<Instant, WideLight.Glow> seen = new HashMap<>();
        double fallOff = setup.lens().relativeIllumination(direction.to(setup.framing().aim()),
                setup.fNumber());
        return layers.stream().mapToDouble(layer -> {
            LightCurve curve = at -> {
                WideLight.Glow glow = seen.computeIfAbsent(at, instant -> light.at(direction, instant));
                return fallOff * illuminanceLx(setup, layer, glow);
            };
            return setup.openings().stream().mapToDouble(opening ->
                    new ProgressCurve(layer.film(), curve, opening, fineness.stepOf(opening))
                            .progress(opening.start(), opening.endExclusive())).sum();
        }).toArray();
    }

    /** What a layer takes of wide light on the lens's axis, in lx of white light. */
    static double illuminanceLx(SheetSetup setup, Layer layer, WideLight.Glow glow) {
        return layer.band().share(glow.colourBv()) * FilmPlane.illuminanceLx(setup.lens(), setup.fNumber(),
                new SkyBrightness(glow.luminanceCdM2()));
    }

    /** Progress of a layer between the nodes, the place given by shares of the frame from its upper left corner. */
    double progress(int layer, double right, double down) {
        double x = right * intervals;
        double y = down * intervals;
        int column = Math.min(intervals - 1, (int) x);
        int row = Math.min(intervals - 1, (int) y);
        int node = row * (intervals + 1) + column;
        double[] values = progress[layer];
        double shareX = x - column;
        double shareY = y - row;
        return (1 - shareY) * ((1 - shareX) * values[node] + shareX * values[node + 1])
                + shareY * ((1 - shareX) * values[node + intervals + 1] + shareX * values[node + intervals + 2]);
    }
}
