package gloam.exposure;

import gloam.film.FilmStock;
import gloam.film.Reciprocity;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.light.SkyBrightness;
import gloam.light.SkyLight;
import gloam.units.Interval;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * What the sky at the frame's centre, or the ground, lays on the film, whichever way its brightness is known.
 *
 * @param atF1    illuminance at f/1; at f/N it is that over N²
 * @param ofBand  what a layer of that band takes of it, in lx of white light
 * @param shutter when it may be open, under light that changes; empty under light that does not
 * @param doubt   how well it is known
 */
public record SkyOnFilm(LightCurve atF1, Function<Band, LightCurve> ofBand, Optional<Shutter> shutter,
                        SkyDoubt doubt) {

    private static final Duration STEP = Duration.ofMinutes(2);
    private static final Duration DOUBT_STEP = Duration.ofMinutes(10);

    /** White light. */
    public SkyOnFilm(LightCurve atF1, Optional<Shutter> shutter) {
        this(atF1, band -> atF1, shutter, SkyDoubt.USUAL);
    }

    /** A sky of unchanging brightness that was measured. */
    public static SkyOnFilm measured(Lens lens, SkyBrightness sky) {
        LightCurve atF1 = LightCurve.constant(FilmPlane.illuminanceLx(lens, FNumber.ONE, sky));
        return new SkyOnFilm(atF1, band -> atF1, Optional.empty(), SkyDoubt.MEASURED);
    }

    /** A computed sky, its light taken as steady. */
    public static SkyOnFilm steady(Lens lens, SkyLight.Sample sky) {
        double lx = FilmPlane.illuminanceLx(lens, FNumber.ONE, sky.total());
        return new SkyOnFilm(LightCurve.constant(lx),
                band -> LightCurve.constant(lx * band.share(sky.colourBv())), Optional.empty(),
                openings -> sky.spreadStops());
    }

    /** A computed sky that changes from the sheet's first opening on. */
    public static SkyOnFilm computed(Lens lens, Function<Instant, SkyLight.Sample> sky, Shutter shutter) {
        Map<Instant, SkyLight.Sample> seen = new HashMap<>();
        Function<Instant, SkyLight.Sample> once = at -> seen.computeIfAbsent(at, sky);
        Map<Band, LightCurve> bands = new EnumMap<>(Band.class);
        for (Band band : Band.values()) {
            LightCurve atF1 = at -> {
                SkyLight.Sample sample = once.apply(at);
                return FilmPlane.illuminanceLx(lens, FNumber.ONE, sample.total())
                        * band.share(sample.colourBv());
            };
            bands.put(band, atF1.sampled(shutter.span(), STEP));
        }
        return new SkyOnFilm(bands.get(Band.ALL), bands::get, Optional.of(shutter),
                SkyDoubt.of(once, DOUBT_STEP));
    }

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

    /** The same, its light known otherwise. */
    public SkyOnFilm known(SkyDoubt otherwise) {
        return new SkyOnFilm(atF1, ofBand, shutter, otherwise);
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
        return shutter.map(open -> ExposureEngine.exposure(film, light, open, toneStops, doubt))
                .orElseGet(() -> ExposureEngine.exposure(film,
                film.midToneLxS() / light.illuminanceLx(opensAt()), toneStops, doubt));
    }

    /**
     * Tone in stops that a layer of that law comes to at an f-number, the shutter open for so many seconds
     * now.
     */
    double toneStops(FilmStock film, Reciprocity law, FNumber fNumber, double openS) {
        return toneStops(film, law, at(fNumber), openS);
    }

    /** The tones of the film's layers, in its order, each under what a filter lets through of its light. */
    List<Double> layerToneStops(FilmStock film, FNumber fNumber, double openS, List<Double> filterShares) {
        List<Band> bands = Band.of(film);
        return IntStream.range(0, bands.size()).mapToObj(layer -> toneStops(film,
                film.layers().get(layer).reciprocity(), ofBand.apply(bands.get(layer))
                .times(filterShares.get(layer) / fNumber.squared()), openS)).toList();
    }

    private double toneStops(FilmStock film, Reciprocity law, LightCurve light, double openS) {
        double progress = shutter.isEmpty()
                ? openS * ProgressCurve.ratePerS(law, film.midToneLxS(), light.illuminanceLx(opensAt()))
                : openings(openS).stream().mapToDouble(opening ->
                        ExposureEngine.progress(film.midToneLxS(), law, light, opening)).sum();
        return ExposureEngine.toneStops(progress);
    }
}
