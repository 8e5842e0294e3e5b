package gloam.view;

import gloam.ephemeris.Body;
import gloam.ephemeris.Ephemeris;
import gloam.ephemeris.Night;
import gloam.gear.Site;
import gloam.trail.Framing;
import gloam.trail.LevelSearch;
import gloam.trail.Trail;
import gloam.trail.TrailEstimator;
import gloam.units.Finite;
import gloam.units.Interval;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Looks for the nights on which a body's trail runs at a wanted angle. */
public final class LevelSurvey {

    private final Ephemeris ephemeris;
    private final Site site;
    private final TrailEstimator estimator;
    private final SiteClock clock;

    /** A survey at a site. */
    public LevelSurvey(Ephemeris ephemeris, Site site) {
        this.ephemeris = ephemeris;
        this.site = site;
        this.estimator = new TrailEstimator(ephemeris, site);
        this.clock = new SiteClock(site.zone());
    }

    /** What is looked for: a body and how it is to run. */
    public record Wanted(Body body, LevelSearch search) {
    }

    /** The spans in the nights of some evenings, both included. */
    public LevelReport between(Wanted wanted, LocalDate from, LocalDate to, Instant now) {
        List<LevelReport.SpanRow> spans = Night.range(ephemeris, site, from, to).stream()
                .flatMap(night -> spans(wanted, night)).toList();
        return new LevelReport(clock.asked(now), Place.of(site),
                LevelReport.Question.of(wanted.body, from, to, wanted), spans);
    }

    private Stream<LevelReport.SpanRow> spans(Wanted wanted, Night night) {
        List<Interval> usable = Interval.intersect(night.darkness(),
                estimator.clearOfSkyline(wanted.body, night.span()));
        if (usable.isEmpty()) {
            return Stream.empty();
        }
        return wanted.search.find(estimator, wanted.body, night.span()).stream().flatMap(level ->
                usable.stream().flatMap(span -> level.span().intersect(span).stream())
                        .map(span -> row(wanted, night, level, span)));
    }

    private LevelReport.SpanRow row(Wanted wanted, Night night, LevelSearch.Level level, Interval span) {
        LevelSearch.Level best = level.within(span, wanted.search, estimator, wanted.body);
        Framing framing = best.framing();
        Optional<Trail> drawn = estimator.trail(framing, wanted.body, span, span.lasts());
        return new LevelReport.SpanRow(night.date(), clock.event(span.start()), clock.event(span.endExclusive()),
                clock.event(best.best()), best.off().degrees(), framing.aim().azimuth().degrees(),
                framing.aim().altitude().degrees(), Finite.of(drawn.map(Trail::lengthMm)),
                Finite.of(drawn.map(Trail::sagittaMm)),
                night.moonUp().stream().anyMatch(up -> up.intersect(span).isPresent()));
    }
}
