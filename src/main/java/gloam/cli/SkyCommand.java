package gloam.cli;

import gloam.ephemeris.Approach;
import gloam.ephemeris.Direction;
import gloam.ephemeris.Night;
import gloam.ephemeris.Star;
import gloam.gear.Site;
import gloam.planner.NightRanking;
import gloam.planner.Trip;
import gloam.report.ApproachesReport;
import gloam.report.HighReport;
import gloam.report.InstantReport;
import gloam.report.NightReport;
import gloam.report.Report;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Interval;
import gloam.units.Quantity;
import gloam.units.Range;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells what the sky does in one night or over many, or where everything is at one instant. */
@Command(name = "sky",
        description = "Tell what happens in one night, where everything stands at one instant, or when bodies come"
                + " close or a target stands high.",
        footer = "gloam sky --lat 41.05 --lon -2.15 --height 1080 --zone Europe/Madrid --night 2027-02-08")
final class SkyCommand extends ReportingCommand {

    private static final Range SEPARATION = new Range("separation", 0, 180, "deg");

    @Mixin
    private SiteOptions place;

    @Option(names = "--night", paramLabel = "DATE", description = "The night of that evening, from noon to noon.")
    private Optional<LocalDate> night;

    @Option(names = "--at", paramLabel = "INSTANT",
            description = "One instant, such as 2027-02-08T22:30 by the site's clocks, or with an offset or Z.")
    private Optional<Moment> at;

    @Option(names = "--star", paramLabel = "RA,DEC[,PMRA,PMDEC[,PARALLAX]]",
            description = "Add a star to --at: ICRS degrees, proper motion in mas a year, parallax in mas. May be given"
                    + " more than once.")
    private List<Star> stars = new ArrayList<>();

    @Mixin
    private DateOptions evenings;

    @Option(names = "--approaches", paramLabel = "DEG",
            description = "Closest approaches of Moon and planets to that angle or less, from --from to --to.")
    private Optional<Quantity> approachesDeg;

    @Option(names = "--above", paramLabel = "TARGET",
            description = "When that stands above --altitude in darkness, from --from to --to: galactic-centre, a"
                    + " constellation (the middle of its named stars), a star, a planet or the Moon.")
    private Optional<String> above;

    @Option(names = "--altitude", paramLabel = "DEG", description = "Least apparent altitude for --above.")
    private Optional<Quantity> altitudeDeg;

    SkyCommand(Session session) {
        super(session);
    }

    @Override
    Report report(Session session) {
        refuseMixture();
        Optional<Trip> trip = place.trip();
        Site site = oneOf(place.sites(trip));
        if (approachesDeg.isPresent()) {
            return approaches(session, site, evenings.dates(trip));
        }
        if (above.isPresent()) {
            return high(session, site, evenings.dates(trip));
        }
        if (night.isPresent()) {
            return NightReport.of(session.ephemeris(), new NightRanking(session.ephemeris())
                    .nights(List.of(site), List.of(night.get())).get(0), session.now());
        }
        return InstantReport.of(session.ephemeris(), site, FromOption.of("--at", () -> at.get().in(site.zone())),
                stars, session.now());
    }

    private void refuseMixture() {
        if (Stream.of(night, at, approachesDeg, above).filter(Optional::isPresent).count() != 1) {
            throw new BadInput("give one of --night DATE, --at INSTANT, --approaches DEG and --above TARGET");
        }
        if (evenings.given() && (night.isPresent() || at.isPresent())) {
            throw new BadInput("--from and --to go with --approaches or --above; leave them out");
        }
        if (above.isPresent() != altitudeDeg.isPresent()) {
            throw new BadInput("--above TARGET and --altitude DEG go together; give both");
        }
        if (at.isEmpty() && !stars.isEmpty()) {
            throw new BadInput("--star goes with --at INSTANT; add it");
        }
    }

    private Report approaches(Session session, Site site, List<LocalDate> dates) {
        Angle widest = Angle.ofDegrees(FromOption.checked("--approaches", SEPARATION, approachesDeg.orElseThrow()));
        Interval span = new Interval(Night.coveredSpan(session.ephemeris(), site, dates.get(0)).start(),
                Night.coveredSpan(session.ephemeris(), site, dates.get(dates.size() - 1)).endExclusive());
        return ApproachesReport.of(session.ephemeris(), site,
                Approach.among(session.ephemeris(), site, widest, span), session.now());
    }

    private Report high(Session session, Site site, List<LocalDate> dates) {
        Angle least = Angle.ofDegrees(FromOption.checked("--altitude", Direction.ALTITUDE, altitudeDeg.orElseThrow()));
        SkyTarget wanted = FromOption.of("--above", () -> SkyTarget.of(above.orElseThrow(), session.stars()));
        List<Night> nights = Night.range(session.ephemeris(), site, dates.get(0), dates.get(dates.size() - 1));
        return HighReport.of(session.ephemeris(), nights, wanted.name(), wanted.target(), least, session.now());
    }
}
