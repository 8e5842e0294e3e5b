package gloam.cli;

import gloam.ephemeris.Direction;
import gloam.gear.Lens;
import gloam.gear.Site;
import gloam.journal.Exposed;
import gloam.journal.Opening;
import gloam.journal.Place;
import gloam.journal.SheetLight;
import gloam.light.SkyBrightness;
import gloam.light.SkyLight;
import gloam.units.BadInput;
import gloam.units.Interval;
import java.util.List;
import java.util.Optional;

/**
 * A sheet about to get its light: measured, computed, or as far as it can be that of the last word on it.
 *
 * @param session where the sky's data come from
 * @param site    the site, where it was given in full
 * @param where   what the journal keeps of it
 * @param aim     where the frame's centre looked
 * @param lens    the lens
 * @param open    when the shutter was open
 */
record SheetLit(Session session, Optional<Site> site, Optional<Place> where, Optional<Direction> aim, Lens lens,
                List<Interval> open) {

    /** The light in every opening. */
    List<Opening> openings(Optional<SkyBrightness> measured, Optional<Correction> correction) {
        if (measured.isPresent()) {
            return open.stream().map(span -> SheetLight.measured(measured.get(), lens, span)).toList();
        }
        Optional<Exposed> known = correction.map(Correction::exposed);
        if (known.filter(Exposed::measured).isPresent()) {
            return underTheSky(known.get());
        }
        if (correction.filter(word -> word.clears(Clearable.SITE) || word.clears(Clearable.AIM)).isPresent()) {
            throw new BadInput("the light was computed for that site and aim; give a measured sky with "
                    + "--sky-mag-arcsec2 MAG, or clear neither (--clear)");
        }
        return known.isPresent() && site.isEmpty() && correction.get().sameLight(aim, open)
                ? known.get().openings().stream().map(light -> SheetLight.through(light, known.get().lens(), lens)).toList()
                : computed();
    }

    /** Openings of the same times as they were, others under the sky as it was measured. */
    private List<Opening> underTheSky(Exposed known) {
        List<Double> steadyLx = List.of(known.middleLx());
        boolean same = known.openings().stream().map(Opening::open).toList().equals(open);
        return (same ? known.openings() : open.stream().map(span -> new Opening(span, steadyLx)).toList()).stream()
                .map(light -> SheetLight.through(light, known.lens(), lens)).toList();
    }

    private List<Opening> computed() {
        Site place = site.orElseThrow(() -> new BadInput("the light has to be computed anew, for which the journal "
                + "keeps too little of the site; add --trip FILE or --place PLACE and --zone ZONE, or a measured sky "
                + "with --sky-mag-arcsec2 MAG"));
        Direction towards = aim.orElseThrow(() -> new BadInput(
                "the light cannot be computed without an aim; give --azimuth and --altitude, or --sky-mag-arcsec2"));
        SkyLight sky = new SkyLight(session.ephemeris(), place);
        return open.stream().map(span -> SheetLight.computed(sky, towards, lens, span)).toList();
    }

    /** The stars at the frame's centre: those of the last word where lens, aim and place are. */
    Exposed.Stars stars(Optional<Correction> correction) {
        if (site.isPresent() || correction.isEmpty()) {
            return SheetLight.stars(lens, site, aim);
        }
        Exposed was = correction.get().before().exposed();
        return was.lens().equals(lens) && was.aim().equals(aim) && was.place().equals(where) ? was.stars()
                : SheetLight.stars(lens, was, where, aim);
    }
}
