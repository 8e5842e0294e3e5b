package gloam.answer;

import gloam.ephemeris.Body;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import gloam.gear.Site;
import gloam.trail.LevelSearch;
import gloam.trail.Trail;
import gloam.trail.TrailEstimator;
import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Range;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * When a body's trail runs at a wanted angle in a camera that keeps the body at a place of the frame, in the
 * dark and above the skyline.
 *
 * @param site   where
 * @param wanted what was asked
 * @param spans  when, in order
 */
public record LevelSpans(Site site, Wanted wanted, List<Span> spans) {

    private static final Range NIGHTS = new Range("number of nights", 1, 800, "");

    /** Copies the list. */
    public LevelSpans {
        spans = List.copyOf(spans);
    }

    /**
     * What is looked for.
     *
     * @param body   whose trail
     * @param search how it is to run, and in which camera
     * @param first  date of the first evening
     * @param last   date of the last one
     */
    public record Wanted(Body body, LevelSearch search, LocalDate first, LocalDate last) {

        /** Refuses the Sun, and nights out of number, with {@link BadInput}. */
        public Wanted {
            refuseSun(body);
            NIGHTS.check(ChronoUnit.DAYS.between(first, last) + 1);
        }
    }

    /**
     * A span during which the trail runs so.
     *
     * @param evening date of the night's evening
     * @param level   when, and in which framing it is nearest to the wanted angle
     * @param drawn   what is drawn on the sheet over the span in that framing; empty where nothing is
     * @param moonUp  whether the Moon is above the horizon during part of it
     */
    public record Span(LocalDate evening, LevelSearch.Level level, Optional<Trail> drawn, boolean moonUp) {
    }

    /** Refuses to look for the Sun with {@link BadInput}. */
    public static void refuseSun(Body body) {
        if (body == Body.SUN) {
            throw new BadInput("the Sun is never looked for in the dark; ask for the Moon or a planet");
        }
    }

    /** The spans at a site. */
    public static LevelSpans of(Ephemeris ephemeris, Site site, Wanted wanted) {
        TrailEstimator estimator = new TrailEstimator(ephemeris, site);
        return new LevelSpans(site, wanted, Night.range(ephemeris, site, wanted.first, wanted.last).stream()
                .flatMap(night -> spans(estimator, wanted, night)).toList());
    }

    private static Stream<Span> spans(TrailEstimator estimator, Wanted wanted, Night night) {
        List<Interval> usable = Interval.intersect(night.darkness(),
                estimator.clearOfSkyline(wanted.body, night.span()));
        if (usable.isEmpty()) {
            return Stream.empty();
        }
        return wanted.search.find(estimator, wanted.body, night.span()).stream().flatMap(level ->
                usable.stream().flatMap(span -> level.span().intersect(span).stream())
                        .map(span -> level.within(span, wanted.search, estimator, wanted.body)))
                .map(level -> span(estimator, wanted, night, level));
    }

    private static Span span(TrailEstimator estimator, Wanted wanted, Night night, LevelSearch.Level level) {
        Interval open = level.span();
        return new Span(night.date(), level,
                estimator.trail(level.framing(), wanted.body, open, open.lasts()),
                night.moonUp().stream().anyMatch(up -> up.intersect(open).isPresent()));
    }
}
