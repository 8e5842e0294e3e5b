package gloam.answer;

import gloam.ephemeris.Daylight;
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
import java.time.Instant;
import java.util.ArrayList;
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
 * @param set       how the camera was set in each opening, one or more
 */
public record SheetLit(Supplier<Ephemeris> ephemeris, Optional<Site> site, Optional<Place> where,
                       List<Set> set) {

    /** Copies the list. */
    public SheetLit {
        set = List.copyOf(set);
    }

    /**
     * How the camera was set in an opening.
     *
     * @param open when the shutter was open
     * @param aim  direction of the frame's centre
     * @param lens the lens at its f-number
     */
    public record Set(Interval open, Optional<Direction> aim, Lens lens) {

        /** Openings at one aim through one lens. */
        public static List<Set> alike(List<Interval> open, Optional<Direction> aim, Lens lens) {
            return open.stream().map(span -> new Set(span, aim, lens)).toList();
        }
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
        List<Opening> light = light(measured, last);
        return IntStream.range(0, set.size()).mapToObj(number -> light.get(number).set(
                Optional.of(set.get(number)).flatMap(Set::aim).filter(own -> !aim().equals(Optional.of(own))),
                Optional.of(set.get(number).lens.fNumbers().get(0))
                        .filter(own -> !lens().fNumbers().get(0).equals(own)))).toList();
    }

    /** Direction of the frame's centre, the first one of several. */
    private Optional<Direction> aim() {
        return set.get(0).aim;
    }

    /** The lens at its f-number, the first one of several. */
    private Lens lens() {
        return set.get(0).lens;
    }

    private List<Opening> light(Optional<SkyBrightness> measured, Optional<LastWord> last) {
        if (measured.isPresent()) {
            return set.stream().map(own -> SheetLight.measured(measured.get(), own.lens, own.open)).toList();
        }
        Optional<Exposed> known = last.map(LastWord::kept);
        if (known.filter(Exposed::measured).isPresent()) {
            return sameTimes(known.get()) ? kept(known.get()) : steady(known.get());
        }
        if (last.filter(LastWord::moved).isPresent()) {
            throw new BadInput("the light was computed for that site and aim; give a measured sky with "
                    + "--sky-mag-arcsec2 MAG, or clear neither (--clear)");
        }
        return known.isPresent() && site.isEmpty() && sameLight(last.get().before) ? kept(known.get())
                : computed();
    }

    /** Whether light computed for an earlier word holds for these openings and their aims. */
    private boolean sameLight(Exposed was) {
        return !was.measured() && sameTimes(was)
                && was.openings().stream().map(was::aim).toList().equals(set.stream().map(Set::aim).toList());
    }

    private boolean sameTimes(Exposed was) {
        return was.openings().stream().map(Opening::open).toList()
                .equals(set.stream().map(Set::open).toList());
    }

    /** The light of openings of the same times. */
    private List<Opening> kept(Exposed known) {
        return IntStream.range(0, set.size()).mapToObj(number -> {
            Opening opening = known.openings().get(number);
            return SheetLight.through(opening, known.lens(opening), set.get(number).lens);
        }).toList();
    }

    /** Openings of other times under the sky that was measured in the longest one. */
    private List<Opening> steady(Exposed known) {
        return set.stream().map(own -> SheetLight.through(new Opening(own.open,
                List.of(known.middleLx())), known.lens(known.longest()), own.lens)).toList();
    }

    private List<Opening> computed() {
        Site place = site.orElseThrow(() ->
                new BadInput("the light has to be computed anew, for which the journal "
                + "keeps too little of the site; add --trip FILE or --place PLACE and --zone ZONE, or a "
                + "measured sky with --sky-mag-arcsec2 MAG"));
        SkyLight sky = new SkyLight(ephemeris.get(), place);
        return set.stream().map(own -> SheetLight.computed(sky, own.aim.orElseThrow(() -> new BadInput(
                "the light cannot be computed without an aim; give --azimuth and --altitude, or "
                + "--sky-mag-arcsec2")), own.lens, own.open)).toList();
    }

    /** What is odd about the sheet. */
    public List<SheetDoubt> doubts(Instant now) {
        List<SheetDoubt> doubts = new ArrayList<>();
        site.flatMap(place -> Daylight.sunUp(ephemeris.get(), place, set.stream().map(Set::open).toList()))
                .ifPresent(from -> doubts.add(new SheetDoubt.SunUp(from)));
        if (set.stream().flatMap(own -> own.aim.stream()).anyMatch(aim -> aim.altitude().degrees() < 0)) {
            doubts.add(SheetDoubt.Plain.AIM_BELOW_HORIZON);
        }
        if (set.stream().anyMatch(own -> own.open.start().isAfter(now))) {
            doubts.add(SheetDoubt.Plain.OPENS_LATER_THAN_NOW);
        }
        return doubts;
    }

    /** The stars at the frame's centre: those of the last entry if lens, aim and place are the same. */
    public Exposed.Stars stars(Optional<LastWord> last) {
        if (site.isPresent() || last.isEmpty()) {
            return SheetLight.stars(lens(), site, aim());
        }
        Exposed was = last.get().before;
        return was.lens().equals(lens()) && was.aim().equals(aim()) && was.place().equals(where)
                ? was.stars() : SheetLight.stars(lens(), was, where, aim());
    }
}
