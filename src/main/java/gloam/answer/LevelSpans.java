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
 * The spans in which a body's trail has a wanted angle, in darkness and above the skyline, in a camera aimed
 * so that the body stays at one point of the frame.
 *
 * @param site   where
 * @param wanted the question
 * @param spans  the spans, in order of time
 */
public record LevelSpans(Site site, Wanted wanted, List<Span> spans) {

    private static final Range NIGHTS = new Range("number of nights", 1, 800, "");

    /** Copies the list. */
    public LevelSpans {
        spans = List.copyOf(spans);
    }

    /**
     * What to look for.
     *
     * @param body   the body
     * @param search angle of the trail, and the camera
     * @param first  date of the first evening
     * @param last   date of the last one
     */
    public record Wanted(Body body, LevelSearch search, LocalDate first, LocalDate last) {

        /** Refuses the Sun, and more than 800 nights, with {@link BadInput}. */
        public Wanted {
            refuseSun(body);
            NIGHTS.check(ChronoUnit.DAYS.between(first, last) + 1);
        }
    }

    /**
     * One span.
     *
     * @param evening date of the night's evening
     * @param level   when, and the framing in which the trail is closest to the wanted angle
     * @param drawn   the trail on the sheet over the whole span in that framing; empty if there is none
     * @param moonUp  whether the Moon is above the horizon during part of it
     */
    public record Span(LocalDate evening, LevelSearch.Level level, Optional<Trail> drawn, boolean moonUp) {
    }

    /** Refuses the Sun with {@link BadInput}. */
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
