package gloam.exposure;

import gloam.film.FilmStock;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.light.SkyBrightness;

/**
 * What of a luminance arrives at the film, and what luminance another camera's frame stands for.
 *
 * <p><b>Model.</b> E = q L / N² with q = π/4 · throughput on the axis; exposure of a mid-tone q K/S by the
 * meter equation N²/t = L S/K for reflected light. <b>Valid.</b> Wide, evenly lit things. <b>Error.</b> That
 * of the lens's transmittance and marked f-numbers, a tenth of a stop or two. <b>Departures.</b> None.
 */
public final class FilmPlane {

    private FilmPlane() {
    }

    /** Illuminance on the axis in lx: q L / N² with q = π/4 · throughput. */
    public static double illuminanceLx(Lens lens, FNumber fNumber, SkyBrightness sky) {
        return Math.PI / 4 * lens.throughput() * sky.cdM2() / fNumber.squared();
    }

    /** Time in s after which that luminance has made the film's mid-tone, without reciprocity failure. */
    public static double meteredS(FilmStock film, Lens lens, FNumber fNumber, SkyBrightness sky) {
        return film.midToneLxS() / illuminanceLx(lens, fNumber, sky);
    }

    /**
     * The luminance that a digital frame renders as its mid-tone, taken through glass that passes light as
     * the film's own lens does: L = H N²/(π/4 τ t) with the mid-tone's H = q K/S of its ISO setting.
     *
     * <p>Of a frame that looked right it is the luminance to expose for. The film is then metered at exactly
     * t2 = t1 (N2/N1)² (S1/S2), longer for filter and bellows, whatever τ is; only the stated luminance hangs
     * on it. Through a lens of q = 0.65 it is the meter equation's L = K N²/(S t), K = 12.5.
     */
    public static SkyBrightness luminanceOfFrame(Lens lens, FNumber fNumber, double iso, double exposureS) {
        return new SkyBrightness(FilmStock.midToneLxS(iso) * fNumber.squared()
                / (Math.PI / 4 * lens.transmittance() * exposureS));
    }
}
