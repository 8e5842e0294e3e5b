package gloam.cli;

import gloam.planner.Plan;
import gloam.planner.Planner;
import gloam.planner.Trip;
import gloam.report.OutputFormat;
import gloam.report.PlanReport;
import gloam.report.Report;
import gloam.report.SheetPictures;
import gloam.units.BadInput;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Makes the timetable of a trip. */
@Command(name = "plan", description = "Make the timetable of a trip: wishes, nights and sheets set against each other.",
        footer = "gloam plan --trip demo-data/trip.yaml --out timetable.txt --out timetable.json")
final class PlanCommand extends ReportingCommand {

    @Mixin
    private SiteOptions place;

    @Option(names = "--from-now", paramLabel = "INSTANT",
            description = "Plan what is left of the trip from then on, such as after a failure or a cloud.")
    private Optional<Moment> fromNow;

    @Option(names = "--spent", paramLabel = "N", description = "Sheets gone by then (default: ${DEFAULT-VALUE}).",
            defaultValue = "0")
    private int spent;

    @Option(names = "--done", paramLabel = "WISH", description = "A wish served by then, as often as it was.")
    private List<String> done = new ArrayList<>();

    @Mixin
    private FittedFilm fitted;

    PlanCommand(Session session) {
        super(session);
    }

    @Override
    Report report(Session session) {
        Trip trip = place.trip().orElseThrow(() -> new BadInput("a plan needs wishes; give --trip FILE"));
        if (trip.wishes().isEmpty()) {
            throw new BadInput("the trip has no wishes; add a section wishes to the trip file");
        }
        Plan plan = new Planner(session.ephemeris(), session.stars()).watchedBy(progress("nights looked at"))
                .plan(fitted.trip(rest(trip), this::note));
        PlanReport report = PlanReport.of(plan, session.now());
        return wants(OutputFormat.HTML) ? report.with(SheetPictures.of(session.ephemeris(), session.stars().stars(), plan,
                progress("sheets pictured"))) : report;
    }

    private Trip rest(Trip trip) {
        if (fromNow.isEmpty()) {
            if (spent > 0 || !done.isEmpty()) {
                throw new BadInput("--spent and --done tell what is gone by an instant; add --from-now INSTANT");
            }
            return trip;
        }
        FromOption.checked("--spent", Trip.SHEETS_SPENT, spent);
        return FromOption.of("--from-now",
                () -> trip.rest(fromNow.get().in(trip.sites().get(0).zone()), spent, done));
    }
}
