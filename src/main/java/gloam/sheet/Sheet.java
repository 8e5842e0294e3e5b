package gloam.sheet;

import gloam.film.FilmStock;
import gloam.gear.Frame;
import gloam.gear.Site;
import gloam.units.Interval;
import java.util.List;

/**
 * A sheet as it is exposed: once, several times alike, or at several aims and f-numbers, whose light adds up.
 *
 * @param site     where
 * @param film     the film
 * @param settings how the camera is set for its openings, at least one, all for one frame and at different
 *                 times
 */
public record Sheet(Site site, FilmStock film, List<Setting> settings) {

    /** Copies the list; refuses a sheet that is never exposed, or that two things are said of at a time. */
    public Sheet {
        settings = List.copyOf(settings);
        if (settings.isEmpty()) {
            throw new IllegalArgumentException("a sheet needs an opening");
        }
        if (settings.stream().map(Sheet::frame).distinct().count() > 1) {
            throw new IllegalArgumentException("a sheet has one size");
        }
        refuseOverlaps(openings(settings));
    }

    /** The setting named first. */
    public Setting first() {
        return settings.get(0);
    }

    /** When the shutter is open, at whatever setting, in order of time. */
    public List<Interval> openings() {
        return openings(settings);
    }

    /** The part of it that light falls on. */
    public Frame frame() {
        return frame(first());
    }

    private static Frame frame(Setting setting) {
        return setting.framing().camera().frame();
    }

    private static List<Interval> openings(List<Setting> settings) {
        return Interval.sorted(settings.stream().flatMap(setting -> setting.openings().stream()).toList());
    }

    static void refuseOverlaps(List<Interval> openings) {
        Interval.overlapping(openings).ifPresent(early -> {
            throw new IllegalArgumentException("the shutter opens at " + early.start()
                    + " before it has closed");
        });
    }
}
