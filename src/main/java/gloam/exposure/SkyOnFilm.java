package gloam.exposure;

import gloam.film.FilmStock;
import gloam.gear.Lens;
import gloam.light.SkyBrightness;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Function;

/**
 * What the sky at the frame's centre lays on the film, whichever way its brightness is known.
 *
 * @param atF1   illuminance at f/1; at f/N it is that over N²
 * @param usable from opening the shutter to when it must be closed, of a sky that changes; empty of one that does not
 */
public record SkyOnFilm(LightCurve atF1, Optional<Interval> usable) {

    private static final Duration STEP = Duration.ofMinutes(2);

    /** A sky of unchanging brightness. */
    public static SkyOnFilm steady(Lens lens, SkyBrightness sky) {
        return new SkyOnFilm(LightCurve.constant(FilmPlane.illuminanceLx(lens, 1, sky)), Optional.empty());
    }

    /**
     * The sky of a digital frame that looked right, through a lens that passes light as the film's own does.
     *
     * <p>The film is metered at t2 = t1 (N2/N1)² (S1/S2), longer for filter and bellows.
     */
    public static SkyOnFilm ofFrame(FilmStock film, Lens lens, double fNumber, double iso, Duration exposure) {
        double meteredAtF1S = seconds(exposure) / (fNumber * fNumber) * iso / film.iso();
        double unshiftedLxS = film.midToneLxS() * Math.pow(2, -film.speedOffsetStops());
        double lossOfLens = lens.throughput() / lens.transmittance();
        return new SkyOnFilm(LightCurve.constant(unshiftedLxS / meteredAtF1S * lossOfLens), Optional.empty());
    }

    /** A sky that changes while the shutter is open. */
    public static SkyOnFilm changing(Lens lens, Function<Instant, SkyBrightness> sky, Interval usable) {
        LightCurve atF1 = at -> FilmPlane.illuminanceLx(lens, 1, sky.apply(at));
        return new SkyOnFilm(atF1.sampled(usable, STEP), Optional.of(usable));
    }

    /** The light at an f-number. */
    LightCurve at(double fNumber) {
        return atF1.times(1 / (fNumber * fNumber));
    }

    private static double seconds(Duration duration) {
        return duration.toNanos() * 1e-9;
    }
}
