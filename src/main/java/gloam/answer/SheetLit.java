package gloam.answer;

import gloam.ephemeris.Direction;
import gloam.ephemeris.Ephemeris;
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
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * The light of a sheet for the journal: measured, computed, or kept from the entry that is corrected.
 *
 * @param ephemeris used only to compute the light
 * @param site      the site, if given in full
 * @param where     the site as the journal keeps it
 * @param aim       direction of the frame's centre
 * @param lens      the lens
 * @param open      when the shutter was open
 * @param set       how the camera was set in each opening; empty where it stayed as it was
 */
public record SheetLit(Supplier<Ephemeris> ephemeris, Optional<Site> site, Optional<Place> where,
                       Optional<Direction> aim, Lens lens, List<Interval> open, List<Set> set) {

    /** Copies the lists. */
    public SheetLit {
        open = List.copyOf(open);
        set = List.copyOf(set);
    }

    /** The light on a sheet that was exposed at one aim through one f-number. */
    public SheetLit(Supplier<Ephemeris> ephemeris, Optional<Site> site, Optional<Place> where,
            Optional<Direction> aim, Lens lens, List<Interval> open) {
        this(ephemeris, site, where, aim, lens, open, List.of());
    }

    /**
     * How the camera was set in one of several openings.
     *
     * @param aim  direction of the frame's centre
     * @param lens the lens at its f-number
     */
    public record Set(Direction aim, Lens lens) {
    }

    /**
     * The entry to correct.
     *
     * @param before the last entry about the sheet
     * @param kept   the same without what the correction clears
     * @param moved  whether the correction clears site or aim
     */
    public record LastWord(Exposed before, Exposed kept, boolean moved) {
    }

    /**
     * The light in every opening.
     *
     * @throws BadInput if it must be computed, and site or aim are not known
     */
    public List<Opening> openings(Optional<SkyBrightness> measured, Optional<LastWord> last) {
        if (measured.isPresent()) {
            return IntStream.range(0, open.size()).mapToObj(number -> SheetLight.measured(measured.get(),
                    set.isEmpty() ? lens : set.get(number).lens, open.get(number))).toList();
        }
        Optional<Exposed> known = last.map(LastWord::kept);
        if (known.filter(Exposed::measured).isPresent()) {
            return underTheSky(known.get());
        }
        if (last.filter(LastWord::moved).isPresent()) {
            throw new BadInput("the light was computed for that site and aim; give a measured sky with "
                    + "--sky-mag-arcsec2 MAG, or clear neither (--clear)");
        }
        return known.isPresent() && site.isEmpty() && sameLight(last.get().before)
                ? known.get().openings().stream().map(light ->
                SheetLight.through(light, known.get().lens(), lens)).toList()
                : computed();
    }

    /** Whether light computed for an earlier word holds for this aim and these openings. */
    private boolean sameLight(Exposed was) {
        return !was.measured() && was.aim().equals(aim) && was.openings().stream().map(Opening::open).toList()
                .equals(open);
    }

    /** Openings of the same times as they were, others under the sky as it was measured. */
    private List<Opening> underTheSky(Exposed known) {
        List<Double> steadyLx = List.of(known.middleLx());
        boolean same = known.openings().stream().map(Opening::open).toList().equals(open);
        return (same ? known.openings() : open.stream().map(span -> new Opening(span, steadyLx)).toList())
                .stream()
                .map(light -> SheetLight.through(light, known.lens(), lens)).toList();
    }

    private List<Opening> computed() {
        Site place = site.orElseThrow(() ->
                new BadInput("the light has to be computed anew, for which the journal "
                + "keeps too little of the site; add --trip FILE or --place PLACE and --zone ZONE, or a "
                + "measured sky with --sky-mag-arcsec2 MAG"));
        Direction towards = aim.orElseThrow(() -> new BadInput(
                "the light cannot be computed without an aim; give --azimuth and --altitude, or "
                + "--sky-mag-arcsec2"));
        SkyLight sky = new SkyLight(ephemeris.get(), place);
        return IntStream.range(0, open.size()).mapToObj(number -> {
            Set own = set.isEmpty() ? new Set(towards, lens) : set.get(number);
            return SheetLight.computed(sky, own.aim, own.lens, open.get(number));
        }).toList();
    }

    /** The stars at the frame's centre: those of the last entry if lens, aim and place are the same. */
    public Exposed.Stars stars(Optional<LastWord> last) {
        if (site.isPresent() || last.isEmpty()) {
            return SheetLight.stars(lens, site, aim);
        }
        Exposed was = last.get().before;
        return was.lens().equals(lens) && was.aim().equals(aim) && was.place().equals(where) ? was.stars()
                : SheetLight.stars(lens, was, where, aim);
    }
}
