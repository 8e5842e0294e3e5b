package gloam.exposure;

import gloam.film.FilmStock;
import gloam.gear.Lens;
import gloam.units.Angle;
import gloam.units.Interval;

/**
 * A sheet and the sky it has seen, against which trails must show.
 *
 * @param film        the film
 * @param lens        the lens
 * @param fNumber     its f-number
 * @param open        from opening to closing the shutter
 * @param skyProgress the sky's progress at the end
 * @param skyLx       illuminance of the sky half-way through
 */
public record ExposedSheet(FilmStock film, Lens lens, double fNumber, Interval open, double skyProgress,
                           double skyLx) {

    /** The sheet after a span under a sky. */
    public static ExposedSheet of(FilmStock film, Lens lens, double fNumber, SkyOnFilm sky, Interval open) {
        LightCurve light = sky.at(fNumber);
        return new ExposedSheet(film, lens, fNumber, open, ExposureEngine.progress(film, light, open),
                light.illuminanceLx(open.middle()));
    }

    /** Tone of the sky on it, in stops from the mid-tone. */
    public double skyToneStops() {
        return ExposureEngine.toneStops(skyProgress);
    }

    /** Whether something of that magnitude and semidiameter leaves a visible trail. */
    public boolean records(double magnitude, Angle semidiameter, double imageSpeedMmS, double lossMag) {
        return TrailLimit.records(passing(imageSpeedMmS, lossMag), magnitude, semidiameter);
    }

    /** Faintest V magnitude of a star that leaves a visible trail; negative infinity where none does. */
    public double trailLimitMag(double imageSpeedMmS, double lossMag) {
        return TrailLimit.magnitude(passing(imageSpeedMmS, lossMag));
    }

    private TrailLimit.Circumstances passing(double imageSpeedMmS, double lossMag) {
        return new TrailLimit.Circumstances(film, lens, fNumber, open.seconds(), skyProgress, skyLx, imageSpeedMmS,
                lossMag);
    }
}
