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
 * The sky's light at the centre of a framing over some minutes, taken at the night's nodes, and what film makes of it.
 *
 * <p>From node to node the light counts as exponential: in the steepest twilight within a hundredth of a stop.
 */
final class FramedLight {

    private static final int SECONDS = 60;

    private final FilmStock film;
    private final int firstMin;
    private final double[] atFullPupilLx;
    private final Map<FNumber, MadeTone> byFNumber = new HashMap<>();

    /** The light that a fixed aim meets at the nodes around some minutes. */
    static FramedLight of(Aiming fixed, FilmStock film, MinuteRun minutes) {
        return new FramedLight(fixed.camera().lens(), film, minutes, fixed::light);
    }

    /** The light of a framing at the nodes around some minutes. */
    static FramedLight of(NightSky sky, Framing framing, FilmStock film, MinuteRun minutes) {
        return new FramedLight(framing.camera().lens(), film, minutes, nodeMin -> sky.light(framing.aim(), nodeMin));
    }

    private FramedLight(Lens lens, FilmStock film, MinuteRun minutes, IntFunction<SkyLight.Sample> light) {
        this.film = film;
        int firstNode = minutes.first() / NightClock.NODE_MIN;
        int nodes = minutes.last() / NightClock.NODE_MIN + 2 - firstNode;
        this.firstMin = firstNode * NightClock.NODE_MIN;
        this.atFullPupilLx = new double[nodes];
        Arrays.setAll(atFullPupilLx, node ->
                FilmPlane.illuminanceLx(lens, FNumber.ONE,
                        light.apply(firstMin + node * NightClock.NODE_MIN).total()));
    }

    /** The light at the frame's centre, exact at every instant. */
    static LightCurve of(NightSky sky, Framing framing, FNumber fNumber) {
        Lens lens = framing.camera().lens();
        return at -> FilmPlane.illuminanceLx(lens, fNumber, sky.light(framing.aim(), at).total());
    }

    /** What the light makes on the film through an f-number. */
    MadeTone through(FNumber fNumber) {
        return byFNumber.computeIfAbsent(fNumber, this::made);
    }

    private MadeTone made(FNumber fNumber) {
        double[] ratesPerS = new double[atFullPupilLx.length];
        Arrays.setAll(ratesPerS,
                node -> ExposureEngine.ratePerS(film, atFullPupilLx[node] / fNumber.squared()));
        double[] byMinute = new double[(ratesPerS.length - 1) * NightClock.NODE_MIN + 1];
        for (int node = 0; node < ratesPerS.length - 1; node++) {
            double ratio = Math.pow(ratesPerS[node + 1] / ratesPerS[node], 1.0 / NightClock.NODE_MIN);
            double inMinute = SECONDS * ratesPerS[node] * meanOfStep(ratio);
            for (int minute = node * NightClock.NODE_MIN; minute < (node + 1) * NightClock.NODE_MIN; minute++) {
                byMinute[minute + 1] = byMinute[minute] + inMinute;
                inMinute *= ratio;
            }
        }
        return new MadeTone(firstMin, byMinute);
    }

    /** Mean of what grows by a ratio within a step, as a share of what it starts from. */
    static double meanOfStep(double ratio) {
        double growth = Math.log(ratio);
        return Math.abs(growth) < 1e-6 ? 1 : (ratio - 1) / growth;
    }

    /** Illuminance at an f-number at a minute in lx. */
    double illuminanceLx(FNumber fNumber, int minute) {
        int node = (minute - firstMin) / NightClock.NODE_MIN;
        double share = (minute - firstMin) % NightClock.NODE_MIN / (double) NightClock.NODE_MIN;
        double fullPupilLx = share == 0 ? atFullPupilLx[node]
                : atFullPupilLx[node] * Math.pow(atFullPupilLx[node + 1] / atFullPupilLx[node], share);
        return fullPupilLx / fNumber.squared();
    }
}
