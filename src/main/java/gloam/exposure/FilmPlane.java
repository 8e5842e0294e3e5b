package gloam.exposure;

import gloam.film.FilmStock;
import gloam.gear.Lens;
import gloam.light.SkyBrightness;

/**
 * What of a luminance arrives at the film, and what luminance another camera's frame stands for.
 *
 * <p><b>Model.</b> E = q L / N² with q = π/4 · throughput on the axis; meter equation N²/t = L S/K for
 * reflected light. <b>Valid.</b> Wide, evenly lit things. <b>Error.</b> That of the lens's transmittance and
 * marked f-numbers, a tenth of a stop or two. <b>Departures.</b> None.
 */
public final class FilmPlane {

    /** K of the meter equation, cd s/m² ISO: one of the two values of ISO 2720 in common use. */
    private static final double METER_K = 12.5;

    private FilmPlane() {
    }

    /** Illuminance on the axis in lx: q L / N² with q = π/4 · throughput. */
    public static double illuminanceLx(Lens lens, double fNumber, SkyBrightness sky) {
        return Math.PI / 4 * lens.throughput() * sky.cdM2() / (fNumber * fNumber);
    }

    /** Time in s after which that luminance has made the film's mid-tone, without reciprocity failure. */
    public static double meteredS(FilmStock film, Lens lens, double fNumber, SkyBrightness sky) {
        return film.midToneLxS() / illuminanceLx(lens, fNumber, sky);
    }

    /**
     * The luminance that a camera without reciprocity failure renders as its mid-tone, L = K N²/(S t).
     *
     * <p>Of a frame that looked right it is the luminance to expose for; film then needs
     * t2 = t1 (N2/N1)² (S1/S2) before reciprocity failure, by lenses that pass light alike.
     */
    public static SkyBrightness luminanceOfFrame(double fNumber, double iso, double exposureS) {
        return new SkyBrightness(METER_K * fNumber * fNumber / (iso * exposureS));
    }
}
