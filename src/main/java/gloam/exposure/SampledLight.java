package gloam.exposure;

import gloam.units.Interval;
import gloam.units.SmoothCurve;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.stream.IntStream;

/** Light known at even steps, interpolated smoothly in its logarithm and straight next to darkness. */
final class SampledLight implements LightCurve {

    /** Stands in for darkness in the logarithm. */
    private static final double DARKNESS_LX = 1e-30;

    private final Grid grid;
    private final double[] illuminancesLx;
    private final SmoothCurve logarithm;

    SampledLight(LightCurve light, Interval span, Duration step) {
        this.grid = Grid.over(span, step);
        this.illuminancesLx = grid.sample(light::illuminanceLx);
        this.logarithm = new SmoothCurve(IntStream.rangeClosed(0, grid.steps()).asDoubleStream().toArray(),
                Arrays.stream(illuminancesLx).map(lx -> Math.log(Math.max(DARKNESS_LX, lx))).toArray());
    }

    @Override
    public double illuminanceLx(Instant at) {
        double step = grid.stepOf(at);
        int panel = grid.panelOf(step);
        double beforeLx = illuminancesLx[panel];
        double afterLx = illuminancesLx[panel + 1];
        return beforeLx > 0 && afterLx > 0
                ? Math.exp(logarithm.at(step))
                : beforeLx + (step - panel) * (afterLx - beforeLx);
    }
}
