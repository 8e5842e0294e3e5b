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
 * <p>Taken at the nodes of the night's clock, exponential in between: by five minutes, in the steepest
 * twilight, within a hundredth of a stop.
 */
final class MinuteLight {

    private static final int SECONDS = 60;

    private final int firstMin;
    private final double[] log2Lx;
    /** Sums of the light before each node, and of the light times its standard deviation in stops. */
    private final double[] light;
    private final double[] doubt;
    private final MinuteProgress[] progress;

    private MinuteLight(int firstMin, double[] log2Lx, double[] light, double[] doubt,
            MinuteProgress[] progress) {
        this.firstMin = firstMin;
        this.log2Lx = log2Lx;
        this.light = light;
        this.doubt = doubt;
        this.progress = progress;
    }

    /** The light that is seen over some minutes, at the nodes of the night's clock. */
    static MinuteLight of(NightSky sky, Equipment with, IntFunction<SkyLight.Sample> seen,
            MinuteRun minutes) {
        int firstNode = minutes.first() / NightClock.NODE_MIN;
        int nodes = minutes.last() / NightClock.NODE_MIN + 1 - firstNode;
        double[] log2Lx = new double[nodes * NightClock.NODE_MIN + 1];
        double[] light = new double[nodes + 2];
        double[] doubt = new double[nodes + 2];
        double fromStops = 0;
        for (int node = 0; node <= nodes; node++) {
            SkyLight.Sample sample = seen.apply((firstNode + node) * NightClock.NODE_MIN);
            double lx = FilmPlane.illuminanceLx(with.camera().lens(), FNumber.ONE, sample.total());
            double toStops = Stops.between(1, lx);
            light[node + 1] = light[node] + lx;
            doubt[node + 1] = doubt[node] + lx * sample.spreadStops();
            for (int minute = 1; node > 0 && minute < NightClock.NODE_MIN; minute++) {
                log2Lx[(node - 1) * NightClock.NODE_MIN + minute] =
                        fromStops + (toStops - fromStops) * minute / NightClock.NODE_MIN;
            }
            log2Lx[node * NightClock.NODE_MIN] = toStops;
            fromStops = toStops;
        }
        MinuteProgress[] progress = new MinuteProgress[with.fNumbers().size()];
        for (int number = 0; number < progress.length; number++) {
            progress[number] = new MinuteProgress(firstNode * NightClock.NODE_MIN,
                    progress(with.response(), log2Lx, with.log2Squared(number)));
        }
        return new MinuteLight(firstNode * NightClock.NODE_MIN, log2Lx, light, doubt, progress);
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
        return IntStream.range(1, light.length).mapToDouble(node ->
                (doubt[node] - doubt[node - 1]) / (light[node] - light[node - 1])).min().orElseThrow();
    }

    /** Standard deviation in stops of the light from one minute to another: the mean by light. */
    double skySpreadStops(int openMin, int closeMin) {
        int from = (openMin - firstMin) / NightClock.NODE_MIN;
        int to = (closeMin - firstMin + NightClock.NODE_MIN - 1) / NightClock.NODE_MIN + 1;
        return (doubt[to] - doubt[from]) / (light[to] - light[from]);
    }
}
