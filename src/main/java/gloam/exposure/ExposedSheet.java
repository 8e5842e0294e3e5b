package gloam.exposure;

import gloam.film.FilmStock;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.units.Angle;
import gloam.units.Interval;

/**
 * A sheet and the sky it has seen, against which trails must show.
 *
 * @param film        the film
 * @param lens        the lens
 * @param fNumber     its f-number
 * @param open        from opening to closing the shutter, the longest time of several
 * @param skyProgress the sky's progress at the end
 * @param skyLx       illuminance of the sky half-way through
 */
public record ExposedSheet(FilmStock film, Lens lens, FNumber fNumber, Interval open, double skyProgress,
                           double skyLx) {

    /** Tone of the sky on it, in stops from the mid-tone. */
    public double skyToneStops() {
        return ExposureEngine.toneStops(skyProgress);
    }

    /** Whether something of that magnitude and semidiameter leaves a visible trail. */
    public boolean records(double magnitude, Angle semidiameter, double imageSpeedMmS, double lossMag) {
        return TrailLimit.records(passing(imageSpeedMmS, lossMag), magnitude, semidiameter);
    }

    /** How many stops its trail stands over the sky around it, 0 or more. */
    public double stopsOverSky(double magnitude, Angle semidiameter, double imageSpeedMmS, double lossMag) {
        return TrailLimit.stopsOverSky(passing(imageSpeedMmS, lossMag), magnitude, semidiameter);
    }

    /** Faintest V magnitude of a star that leaves a visible trail; negative infinity where none does. */
    public double trailLimitMag(double imageSpeedMmS, double lossMag) {
        return TrailLimit.magnitude(passing(imageSpeedMmS, lossMag));
    }

    private TrailLimit.Circumstances passing(double imageSpeedMmS, double lossMag) {
        return new TrailLimit.Circumstances(film, lens, fNumber, open.seconds(), skyProgress, skyLx,
                imageSpeedMmS, lossMag);
    }
}
