package gloam.planner;

import gloam.exposure.ExposureEngine;
import gloam.exposure.FilmPlane;
import gloam.exposure.LightCurve;
import gloam.film.FilmStock;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.light.SkyLight;
import gloam.trail.Framing;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.IntFunction;

/**
 * The sky's light at the centre of a framing over some minutes, taken at the steps of the night's clock, and what film makes
 * of it.
 *
 * <p>From step to step the light counts as exponential: by five minutes, in the steepest twilight, within a hundredth of
 * a stop.
 */
final class FramedLight {

    private static final int SECONDS = 60;

    private final FilmStock film;
    private final int stepMin;
    private final int firstMin;
    private final double[] atFullPupilLx;
    private final Map<FNumber, MinuteProgress> byFNumber = new HashMap<>();

    /** The light that a fixed aim meets at the steps around some minutes. */
    static FramedLight of(Aiming fixed, FilmStock film, MinuteRun minutes) {
        return new FramedLight(fixed.camera().lens(), film, fixed.stepMin(), minutes, fixed::light);
    }

    /** The light of a framing at the steps around some minutes. */
    static FramedLight of(NightSky sky, Framing framing, FilmStock film, MinuteRun minutes) {
        return new FramedLight(framing.camera().lens(), film, sky.clock().stepMin(), minutes,
                nodeMin -> sky.light(framing.aim(), nodeMin));
    }

    private FramedLight(Lens lens, FilmStock film, int stepMin, MinuteRun minutes, IntFunction<SkyLight.Sample> light) {
        this.film = film;
        this.stepMin = stepMin;
        int first = minutes.first() / stepMin;
        this.firstMin = first * stepMin;
        this.atFullPupilLx = new double[minutes.last() / stepMin + 2 - first];
        Arrays.setAll(atFullPupilLx, step ->
                FilmPlane.illuminanceLx(lens, FNumber.ONE, light.apply(firstMin + step * stepMin).total()));
    }

    /** The light at the frame's centre, exact at every instant. */
    static LightCurve of(NightSky sky, Framing framing, FNumber fNumber) {
        Lens lens = framing.camera().lens();
        return at -> FilmPlane.illuminanceLx(lens, fNumber, sky.light(framing.aim(), at).total());
    }

    /** What the light makes on the film through an f-number. */
    MinuteProgress through(FNumber fNumber) {
        return byFNumber.computeIfAbsent(fNumber, this::made);
    }

    private MinuteProgress made(FNumber fNumber) {
        double[] ratesPerS = new double[atFullPupilLx.length];
        Arrays.setAll(ratesPerS, node -> ExposureEngine.ratePerS(film, atFullPupilLx[node] / fNumber.squared()));
        double[] byMinute = new double[(ratesPerS.length - 1) * stepMin + 1];
        for (int step = 0; step < ratesPerS.length - 1; step++) {
            double ratio = Math.pow(ratesPerS[step + 1] / ratesPerS[step], 1.0 / stepMin);
            double inMinute = SECONDS * ratesPerS[step] * meanOfStep(ratio);
            for (int minute = step * stepMin; minute < (step + 1) * stepMin; minute++) {
                byMinute[minute + 1] = byMinute[minute] + inMinute;
                inMinute *= ratio;
            }
        }
        return new MinuteProgress(firstMin, byMinute);
    }

    /** Mean of what grows by a ratio within a step, as a share of what it starts from. */
    static double meanOfStep(double ratio) {
        double growth = Math.log(ratio);
        return Math.abs(growth) < 1e-6 ? 1 : (ratio - 1) / growth;
    }

    /** Illuminance at an f-number at a minute in lx. */
    double illuminanceLx(FNumber fNumber, int minute) {
        int step = (minute - firstMin) / stepMin;
        double share = (minute - firstMin) % stepMin / (double) stepMin;
        double fullPupilLx = share == 0 ? atFullPupilLx[step]
                : atFullPupilLx[step] * Math.pow(atFullPupilLx[step + 1] / atFullPupilLx[step], share);
        return fullPupilLx / fNumber.squared();
    }
}
