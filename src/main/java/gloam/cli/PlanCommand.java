package gloam.cli;

import gloam.answer.Gone;
import gloam.answer.SheetPictures;
import gloam.answer.Timetable;
import gloam.ephemeris.Night;
import gloam.gear.Site;
import gloam.planner.FormerPlan;
import gloam.planner.Plan;
import gloam.planner.Trip;
import gloam.store.FormerPlanFile;
import gloam.store.Input;
import gloam.store.TripFile;
import gloam.units.BadInput;
import gloam.view.OutputFormat;
import gloam.view.PlanReport;
import gloam.view.Report;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Makes the timetable of a trip. */
final class PlanCommand extends ReportingCommand {

    private final SiteOptions place = group(new SiteOptions());

    private final Option<Moment> fromNow = option("--from-now", "INSTANT", Moment.class,
            "Plan the rest of the trip from this moment on, for example after a failure.");

    private final Option<LocalDate> night = option("--night", "DATE", LocalDate.class,
            "Plan this evening alone, and what is left of it if the sky clears only later.");

    private final Option<Boolean> tonight = flag("--tonight", "The same for the rest of this evening.");

    private final Option<Integer> spent = option("--spent", "N", Integer.class,
            "Sheets already used (default: those in the journal, if any).");

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
        TripFile.Reading read = place.reading(session)
                .orElseThrow(() -> new BadInput("a plan needs wishes; give --trip FILE"));
        Trip trip = read.trip();
        if (previous.given() && (night.given() || tonight.given())) {
            throw new BadInput("--previous would cancel what other nights have; leave it out with "
                    + (night.given() ? "--night" : "--tonight"));
        }
        Optional<FormerPlan> former = previous.value()
                .map(file -> FromOption.of("--previous", () -> former(file, trip)));
        Optional<FittedFilm.Known> journal = fitted.journal(Optional.of(read), this::note);
        Timetable timetable = Timetable.of(session.ephemeris(), session.stars(),
                fitted.trip(rest(trip, journal, session), read, journal, this::note), former, session.now(),
                progress("nights looked at"));
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

    /** What the journal has seen of the trip; nothing without a journal. */
    private Gone gone(Trip trip, Optional<FittedFilm.Known> journal) {
        Gone gone = journal.map(known -> Gone.of(trip, known.journal()))
                .orElse(new Gone(0, List.of(), Optional.empty()));
        if (gone.sheets() > 0) {
            note(gone.sheets() + (gone.sheets() == 1 ? " sheet" : " sheets")
                    + " of the journal spent on this trip"
                    + (gone.served().isEmpty() ? "" : "; served: " + String.join(", ", gone.served())));
        }
        return gone;
    }

    private Trip rest(Trip trip, Optional<FittedFilm.Known> journal, Session session) {
        Gone gone = gone(trip, journal);
        String known = journal.map(FittedFilm.Known::from).orElse("--journal");
        boolean begins = fromNow.given() || night.given() || tonight.given() || gone.sheets() > 0;
        if (!begins && (spent.given() || done.given())) {
            throw new BadInput("--spent and --done need a moment; add --from-now INSTANT");
        } else if (tonight.given() && (fromNow.given() || night.given())) {
            throw new BadInput("--tonight begins now; leave out "
                    + (night.given() ? "--night" : "--from-now"));
        } else if (!begins) {
            return trip;
        }
        Site first = trip.sites().get(0);
        Trip begun = fromNow.given() ? FromOption.of("--from-now",
                () -> trip.rest(fromNow.get().in(first.zone()))) : gone.until().filter(last -> !night.given())
                .map(last -> FromOption.of(known, () -> trip.rest(last))).orElse(trip);
        Trip rest = tonight.given() ? FromOption.of("--tonight", () -> trip.rest(session.now())
                .evening(Night.eveningOf(first, session.now())))
                : night.given() ? FromOption.of("--night", () -> begun.evening(night.get())) : begun;
        Trip carried = FromOption.of(spent.given() ? "--spent" : known,
                () -> rest.withSpent(spent.given() ? spent.get() : gone.sheets()));
        return FromOption.of("--done", () -> carried.without(done.given() ? done.get() : gone.served()));
    }
}
