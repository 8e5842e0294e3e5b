package gloam.planner;

import gloam.exposure.FilmPlane;
import gloam.gear.FNumber;
import gloam.light.SkyLight;
import gloam.units.Stops;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * The sky's light at the centre of a framing by the minute, and what a film makes of it.
 *
 * <p>Taken at the steps of the night's clock, exponential in between: by five minutes, in the steepest
 * twilight, within a hundredth of a stop.
 */
final class MinuteLight {

    private static final int SECONDS = 60;

    private final int firstMin;
    private final int stepMin;
    private final double[] log2Lx;
    /** Sums of the light before each step, and of the light times its standard deviation in stops. */
    private final double[] light;
    private final double[] doubt;
    private final MinuteProgress[] progress;

    private MinuteLight(int firstMin, int stepMin, double[] log2Lx, double[] light, double[] doubt,
            MinuteProgress[] progress) {
        this.firstMin = firstMin;
        this.stepMin = stepMin;
        this.log2Lx = log2Lx;
        this.light = light;
        this.doubt = doubt;
        this.progress = progress;
    }

    /** The light that is seen over some minutes, at the steps of the night's clock. */
    static MinuteLight of(NightSky sky, Equipment with, IntFunction<SkyLight.Sample> seen,
            MinuteRun minutes) {
        int stepMin = sky.clock().stepMin();
        int firstStep = minutes.first() / stepMin;
        int steps = minutes.last() / stepMin + 1 - firstStep;
        double[] log2Lx = new double[steps * stepMin + 1];
        double[] light = new double[steps + 2];
        double[] doubt = new double[steps + 2];
        double fromStops = 0;
        for (int step = 0; step <= steps; step++) {
            SkyLight.Sample sample = seen.apply((firstStep + step) * stepMin);
            double lx = FilmPlane.illuminanceLx(with.camera().lens(), FNumber.ONE, sample.total());
            double toStops = Stops.between(1, lx);
            light[step + 1] = light[step] + lx;
            doubt[step + 1] = doubt[step] + lx * sample.spreadStops();
            for (int minute = 1; step > 0 && minute < stepMin; minute++) {
                log2Lx[(step - 1) * stepMin + minute] = fromStops + (toStops - fromStops) * minute / stepMin;
            }
            log2Lx[step * stepMin] = toStops;
            fromStops = toStops;
        }
        MinuteProgress[] progress = new MinuteProgress[with.fNumbers().size()];
        for (int number = 0; number < progress.length; number++) {
            progress[number] = new MinuteProgress(firstStep * stepMin,
                    progress(with.response(), log2Lx, with.log2Squared(number)));
        }
        return new MinuteLight(firstStep * stepMin, stepMin, log2Lx, light, doubt, progress);
    }

    private static double[] progress(FilmResponse response, double[] log2Lx, double log2Squared) {
        double[] progress = new double[log2Lx.length];
        double before = response.ratePerS(log2Lx[0] - log2Squared);
        for (int minute = 1; minute < log2Lx.length; minute++) {
            double now = response.ratePerS(log2Lx[minute] - log2Squared);
            progress[minute] = progress[minute - 1] + SECONDS * (before + now) / 2;
            before = now;
        }
        return progress;
    }

    /** Progress of the film through an f-number, given by its place among those to choose from. */
    MinuteProgress through(int number) {
        return progress[number];
    }

    /** Illuminance at f/1 at a minute, as the logarithm to base 2 of lx. */
    double log2Lx(int minute) {
        return log2Lx[minute - firstMin];
    }

    /** The least standard deviation of any. */
    double leastSkySpreadStops() {
        return IntStream.range(1, light.length).mapToDouble(step ->
                (doubt[step] - doubt[step - 1]) / (light[step] - light[step - 1])).min().orElseThrow();
    }

    /** Standard deviation in stops of the light from one minute to another: the mean by light. */
    double skySpreadStops(int openMin, int closeMin) {
        int from = (openMin - firstMin) / stepMin;
        int to = (closeMin - firstMin + stepMin - 1) / stepMin + 1;
        return (doubt[to] - doubt[from]) / (light[to] - light[from]);
    }
}
