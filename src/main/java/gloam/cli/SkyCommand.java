package gloam.cli;

import gloam.ephemeris.Star;
import gloam.gear.Site;
import gloam.planner.NightRanking;
import gloam.report.InstantReport;
import gloam.report.NightReport;
import gloam.report.Report;
import gloam.units.BadInput;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells what the sky does in one night, or where everything is at one instant. */
@Command(name = "sky", description = "Tell what happens in one night, or where everything stands at one instant.",
        footer = "gloam sky --lat 41.05 --lon -2.15 --height 1080 --zone Europe/Madrid --night 2027-02-08")
final class SkyCommand extends ReportingCommand {

    @Mixin
    private SiteOptions place;

    @Option(names = "--night", paramLabel = "DATE", description = "The night of that evening, from noon to noon.")
    private Optional<LocalDate> night;

    @Option(names = "--at", paramLabel = "INSTANT",
            description = "One instant, such as 2027-02-08T22:30 by the site's clocks, or with an offset or Z.")
    private Optional<Moment> at;

    @Option(names = "--star", paramLabel = "RA,DEC[,PMRA,PMDEC]",
            description = "Add a star to --at: ICRS degrees, proper motion in mas a year. May be given more than once.")
    private List<Star> stars = new ArrayList<>();

    SkyCommand(Session session) {
        super(session);
    }

    @Override
    Report report(Session session) {
        if (night.isPresent() == at.isPresent()) {
            throw new BadInput("give either --night DATE or --at INSTANT");
        }
        Site site = oneOf(place.sites(place.trip()));
        if (night.isPresent()) {
            return NightReport.of(session.ephemeris(), new NightRanking(session.ephemeris())
                    .nights(List.of(site), List.of(night.get())).get(0), session.now());
        }
        return InstantReport.of(session.ephemeris(), site, FromOption.of("--at", () -> at.get().in(site.zone())),
                stars, session.now());
    }
}
