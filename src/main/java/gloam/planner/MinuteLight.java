package gloam.planner;

import gloam.ephemeris.Direction;
import gloam.exposure.FilmPlane;
import gloam.gear.FNumber;
import gloam.light.LightSource;
import gloam.light.SkyBrightness;
import gloam.light.SkyLight;
import gloam.units.Stops;

/**
 * The sky's light at the centre of a framing by the minute, and what a film makes of it.
 *
 * <p>Taken at the steps of the night's clock, exponential in between: by five minutes, in the steepest
 * twilight, within a hundredth of a stop.
 */
final class MinuteLight {

    private static final int SECONDS = 60;

    private final int firstMin;
    private final double[] log2Lx;
    private final MinuteProgress[] progress;

    private MinuteLight(int firstMin, double[] log2Lx, MinuteProgress[] progress) {
        this.firstMin = firstMin;
        this.log2Lx = log2Lx;
        this.progress = progress;
    }

    /**
     * The light of a direction over some minutes.
     *
     * @param moonless without the Moon's own, as a picture of the Moon wants it
     */
    static MinuteLight of(NightSky sky, Equipment with, Direction direction, MinuteRun minutes,
            boolean moonless) {
        int stepMin = sky.clock().stepMin();
        int firstStep = minutes.first() / stepMin;
        int steps = minutes.last() / stepMin + 1 - firstStep;
        SkyLight.Patch patch = sky.patch(direction);
        double[] log2Lx = new double[steps * stepMin + 1];
        double from = log2Lx(sky, with, patch, firstStep * stepMin, moonless);
        for (int step = 0; step < steps; step++) {
            double to = log2Lx(sky, with, patch, (firstStep + step + 1) * stepMin, moonless);
            for (int minute = 0; minute < stepMin; minute++) {
                log2Lx[step * stepMin + minute] = from + (to - from) * minute / stepMin;
            }
            from = to;
        }
        log2Lx[steps * stepMin] = from;
        MinuteProgress[] progress = new MinuteProgress[with.fNumbers().size()];
        for (int number = 0; number < progress.length; number++) {
            progress[number] = new MinuteProgress(firstStep * stepMin,
                    progress(with.response(), log2Lx, with.log2Squared(number)));
        }
        return new MinuteLight(firstStep * stepMin, log2Lx, progress);
    }

    private static double log2Lx(NightSky sky, Equipment with, SkyLight.Patch patch, int minute,
            boolean moonless) {
        SkyLight.Sample sample = sky.light(patch, minute);
        SkyBrightness seen = moonless ? sample.without(LightSource.MOON) : sample.total();
        return Stops.between(1, FilmPlane.illuminanceLx(with.camera().lens(), FNumber.ONE, seen));
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
}
