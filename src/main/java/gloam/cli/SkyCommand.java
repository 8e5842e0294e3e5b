package gloam.cli;

import gloam.answer.NightCourse;
import gloam.answer.SkyMap;
import gloam.answer.InstantSky;
import gloam.answer.HighStands;
import gloam.answer.Approaches;
import gloam.ephemeris.Direction;
import gloam.ephemeris.NamedTarget;
import gloam.ephemeris.Night;
import gloam.ephemeris.Star;
import gloam.gear.Site;
import gloam.planner.Trip;
import gloam.view.ApproachesReport;
import gloam.view.HighReport;
import gloam.view.InstantReport;
import gloam.view.NightReport;
import gloam.view.Report;
import gloam.view.SkyMapReport;
import gloam.units.Angle;
import gloam.units.BadInput;
import gloam.units.Quantity;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Tells what the sky does in one night or over many, or where everything is at one instant. */
final class SkyCommand extends ReportingCommand {

    private final SiteOptions place = group(new SiteOptions());

    private final Option<LocalDate> night = option("--night", "DATE", LocalDate.class,
            "The night that begins on this evening, from noon to noon.");

    private final Option<Moment> at = option("--at", "INSTANT", Moment.class,
            "One instant, such as 2027-02-08T22:30 (local time at the site), or with an offset or Z.");

    private final Option<List<Star>> stars = repeated("--star", "RA,DEC[,PMRA,PMDEC[,PARALLAX]]", Star.class,
            "Add a star to --at: ICRS degrees, proper motion in mas a year, parallax in mas. May be given"
            + " more than once.");

    private final DateOptions evenings = group(new DateOptions());

    private final Option<Quantity> approachesDeg = option("--approaches", "DEG", Quantity.class,
            "Find approaches of Moon and planets to this angle or less, from --from to --to.");

    private final Option<String> above = option("--above", "TARGET", String.class,
            "Find when this target is above --altitude in darkness, from --from to --to: galactic-centre, a"
            + " constellation (the middle of its named stars), a star, a planet or the Moon.");

    private final Option<Quantity> altitudeDeg = option("--altitude", "DEG", Quantity.class,
            "Least apparent altitude for --above, or that of the direction for --azimuth.");

    private final Option<Quantity> azimuthDeg = option("--azimuth", "DEG", Quantity.class,
            "With --at or --night list each source's share of the light in this direction.");

    private final Option<Boolean> map = flag("--map",
            "With --at show how bright the whole sky is; svg and html draw it.");

    SkyCommand(Session session) {
        super(session, "sky",
                "List a night's events, show the sky at one instant, or find close approaches and the times a"
                + " target is high.",
                "gloam sky --lat 41.05 --lon -2.15 --height 1080 --zone Europe/Madrid --night 2027-02-08");
    }

    @Override
    Report report(Session session) {
        refuseMixture();
        Optional<Trip> trip = place.trip(session);
        Site site = oneOf(place.sites(trip));
        if (approachesDeg.given()) {
            return approaches(session, site, evenings.dates(trip, List.of(site)));
        }
        if (above.given()) {
            return high(session, site, evenings.dates(trip, List.of(site)));
        }
        if (night.given()) {
            List<LocalDate> evening = FromOption.of("--night",
                    () -> Night.evenings(List.of(site), night.get(), night.get()));
            return NightReport.of(NightCourse.of(session.ephemeris(), site, evening.get(0), towards()),
                    session.now());
        }
        Instant instant = FromOption.of("--at", () -> at.get().in(site.zone()));
        return map.given() ? SkyMapReport.of(SkyMap.of(session.ephemeris(), site, instant), session.now())
                : InstantReport.of(InstantSky.of(session.ephemeris(), site, instant, stars.get(), towards()),
                session.now());
    }

    private void refuseMixture() {
        if (Stream.of(night.value(), at.value(), approachesDeg.value(), above.value())
                .filter(Optional::isPresent).count() != 1) {
            throw new BadInput("give one of --night DATE, --at INSTANT, --approaches DEG and --above TARGET");
        }
        if (evenings.given() && (night.given() || at.given())) {
            throw new BadInput("--from and --to go with --approaches or --above; leave them out");
        }
        if ((above.given() || azimuthDeg.given()) != altitudeDeg.given()) {
            throw new BadInput("--above TARGET and --altitude DEG go together, and --azimuth DEG and"
                    + " --altitude DEG; give both");
        }
        if (azimuthDeg.given() && !at.given() && !night.given()) {
            throw new BadInput("--azimuth goes with --at or --night; add one of them");
        }
        if (map.given() && (!at.given() || azimuthDeg.given() || !stars.get().isEmpty())) {
            throw new BadInput("--map goes with --at alone; add it, or leave out --azimuth and --star");
        }
        if (!at.given() && !stars.get().isEmpty()) {
            throw new BadInput("--star goes with --at INSTANT; add it");
        }
    }

    private Optional<Direction> towards() {
        return azimuthDeg.value().map(azimuth -> Direction.ofDegrees(
                FromOption.checked("--azimuth", Direction.AZIMUTH, azimuth),
                FromOption.checked("--altitude", Direction.ALTITUDE, altitudeDeg.get())));
    }

    private Report approaches(Session session, Site site, List<LocalDate> dates) {
        Angle widest = Angle.ofDegrees(
                FromOption.checked("--approaches", Approaches.SEPARATION, approachesDeg.get()));
        return ApproachesReport.of(Approaches.of(session.ephemeris(), site, widest, dates.get(0),
                dates.get(dates.size() - 1)), session.now());
    }

    private Report high(Session session, Site site, List<LocalDate> dates) {
        Angle least = Angle.ofDegrees(FromOption.checked("--altitude", Direction.ALTITUDE,
                altitudeDeg.get()));
        NamedTarget wanted = FromOption.of("--above", () -> NamedTarget.of(above.get(), session::stars));
        return HighReport.of(HighStands.of(session.ephemeris(), site,
                new HighStands.Wanted(wanted.name(), wanted.target(), least), dates.get(0),
                dates.get(dates.size() - 1)), session.now());
    }
}
