package gloam.proof;

import gloam.film.FilmStock;
import gloam.gear.FNumber;
import gloam.gear.Lens;
import gloam.gear.Site;
import gloam.light.GroundLight;
import gloam.trail.Framing;
import gloam.units.Interval;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How one sheet is exposed.
 *
 * @param site              where
 * @param framing           where the camera points
 * @param film              the film
 * @param fNumber           the f-number
 * @param openings          when the shutter is open, in order of time, at least one, without overlaps
 * @param groundReflectance share of its light that the land throws back; empty for land that stays black
 */
public record SheetSetup(Site site, Framing framing, FilmStock film, FNumber fNumber, List<Interval> openings,
                         OptionalDouble groundReflectance) {

    /** Copies the list; refuses a sheet that is never exposed. */
    public SheetSetup {
        openings = List.copyOf(openings);
        if (openings.isEmpty()) {
            throw new IllegalArgumentException("a sheet needs an opening");
        }
        groundReflectance.ifPresent(GroundLight.REFLECTANCE::check);
    }

    /** From the first opening to the last closing. */
    public Interval whole() {
        return Interval.span(openings);
    }

    Lens lens() {
        return framing.camera().lens();
    }
}
