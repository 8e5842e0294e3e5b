package gloam.cli;

import gloam.answer.SheetPictures;
import gloam.answer.Timetable;
import gloam.planner.FormerPlan;
import gloam.planner.Plan;
import gloam.planner.Trip;
import gloam.store.FormerPlanFile;
import gloam.store.Input;
import gloam.units.BadInput;
import gloam.view.OutputFormat;
import gloam.view.PlanReport;
import gloam.view.Report;
import java.util.List;
import java.util.Optional;

/** Makes the timetable of a trip. */
final class PlanCommand extends ReportingCommand {

    private final SiteOptions place = group(new SiteOptions());

    private final Option<Moment> fromNow = option("--from-now", "INSTANT", Moment.class,
            "Plan the rest of the trip from this moment on, for example after a failure.");

    private final Option<Integer> spent = option("--spent", "N", Integer.class,
            "Sheets already used (default: ${DEFAULT-VALUE}).").byDefault("0");

    private final Option<List<String>> done = repeated("--done", "WISH", String.class,
            "A wish already fulfilled (repeat once per sheet).");

    private final Option<Input> previous = input("--previous", "FILE",
            "The previous timetable, saved as JSON: its calendar events are moved or cancelled.");

    private final FittedFilm fitted = group(new FittedFilm());

    PlanCommand(Session session) {
        super(session, "plan",
                "Make the timetable of a trip: wishes, nights and sheets set against each other.",
                "gloam plan --trip demo-data/trip.yaml --out timetable.txt --out timetable.json");
    }

    @Override
    Report report(Session session) {
        Trip trip = place.trip(session).orElseThrow(() ->
                new BadInput("a plan needs wishes; give --trip FILE"));
        Optional<FormerPlan> former = previous.value()
                .map(file -> FromOption.of("--previous", () -> former(file, trip)));
        Timetable timetable = Timetable.of(session.ephemeris(), session.stars(),
                fitted.trip(rest(trip), this::note), former, session.now(), progress("nights looked at"));
        PlanReport report = PlanReport.of(timetable, session.now());
        return wants(OutputFormat.HTML)
                ? report.with(SheetPictures.of(session.ephemeris(), session.stars().stars(),
                timetable.plan(), progress("sheets pictured"))) : report;
    }

    private static FormerPlan former(Input file, Trip trip) {
        FormerPlan former = FormerPlanFile.read(file);
        if (!former.suits(trip)) {
            throw new BadInput(file.shown()
                    + " is the plan of another trip: it serves none of the wishes of \"" + trip.title()
                    + "\". Give a plan of this one");
        }
        return former;
    }

    private Trip rest(Trip trip) {
        if (!fromNow.given()) {
            if (spent.get() > 0 || !done.get().isEmpty()) {
                throw new BadInput("--spent and --done need a moment; add --from-now INSTANT");
            }
            return trip;
        }
        Trip rest = FromOption.of("--from-now",
                () -> trip.rest(fromNow.get().in(trip.sites().get(0).zone())));
        Trip carried = FromOption.of("--spent", () -> rest.withSpent(spent.get()));
        return FromOption.of("--done", () -> carried.without(done.get()));
    }
}
