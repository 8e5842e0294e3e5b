package gloam.exposure;

import gloam.film.FilmStock;
import gloam.film.Reciprocity;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.light.SkyBrightness;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What the sky at the frame's centre, or the ground, lays on the film, whichever way its brightness is known.
 *
 * @param atF1    illuminance at f/1; at f/N it is that over N²
 * @param shutter when it may be open, under light that changes; empty under light that does not
 */
public record SkyOnFilm(LightCurve atF1, Optional<Shutter> shutter) {

    private static final Duration STEP = Duration.ofMinutes(2);

    /** A sky of unchanging brightness. */
    public static SkyOnFilm steady(Lens lens, SkyBrightness sky) {
        return new SkyOnFilm(LightCurve.constant(FilmPlane.illuminanceLx(lens, FNumber.ONE, sky)),
                Optional.empty());
    }

    /** A sky that changes while the shutter is open. */
    public static SkyOnFilm changing(Lens lens, Function<Instant, SkyBrightness> sky, Interval usable) {
        return changing(lens, sky, Shutter.on(usable));
    }

    /** A sky that changes from the sheet's first opening on. */
    public static SkyOnFilm changing(Lens lens, Function<Instant, SkyBrightness> sky, Shutter shutter) {
        LightCurve atF1 = at -> FilmPlane.illuminanceLx(lens, FNumber.ONE, sky.apply(at));
        return new SkyOnFilm(atF1.sampled(shutter.span(), STEP), Optional.of(shutter));
    }

    /** The light at an f-number. */
    LightCurve at(FNumber fNumber) {
        return atF1.times(1 / fNumber.squared());
    }

    /** When the shutter opens; under light that never changes any instant will do. */
    private Instant opensAt() {
        return shutter.map(Shutter::opensAt).orElse(Instant.EPOCH);
    }

    /** All openings of the sheet, the present one closed after that many seconds. */
    List<Interval> openings(double openS) {
        return shutter.orElseGet(() -> Shutter.on(Interval.lasting(opensAt(), Duration.ofDays(1))))
                .openings(openS);
    }

    /** The exposure that makes a tone at an f-number. */
    Exposure exposure(FilmStock film, FNumber fNumber, double toneStops) {
        LightCurve light = at(fNumber);
        return shutter.map(open -> ExposureEngine.exposure(film, light, open, toneStops)).orElseGet(() ->
                ExposureEngine.exposure(film, film.midToneLxS() / light.illuminanceLx(opensAt()), toneStops));
    }

    /**
     * Tone in stops that a layer of that law comes to at an f-number, the shutter open for so many seconds
     * now.
     */
    double toneStops(FilmStock film, Reciprocity law, FNumber fNumber, double openS) {
        LightCurve light = at(fNumber);
        double progress = shutter.isEmpty()
                ? openS * ProgressCurve.ratePerS(law, film.midToneLxS(), light.illuminanceLx(opensAt()))
                : openings(openS).stream().mapToDouble(opening ->
                        ExposureEngine.progress(film.midToneLxS(), law, light, opening)).sum();
        return ExposureEngine.toneStops(progress);
    }
}
