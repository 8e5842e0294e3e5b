package gloam.cli;

import gloam.planner.Planner;
import gloam.planner.Trip;
import gloam.report.PlanReport;
import gloam.report.Report;
import gloam.units.BadInput;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Makes the timetable of a trip. */
@Command(name = "plan", description = "Make the timetable of a trip: wishes, nights and sheets set against each other.",
        footer = "gloam plan --trip demo-data/trip.yaml --out timetable.txt --out timetable.json")
final class PlanCommand extends ReportingCommand {

    @Mixin
    private SiteOptions place;

    PlanCommand(Session session) {
        super(session);
    }

    @Override
    Report report(Session session) {
        Trip trip = place.trip().orElseThrow(() -> new BadInput("a plan needs wishes; give --trip FILE"));
        if (trip.wishes().isEmpty()) {
            throw new BadInput("the trip has no wishes; add a section wishes to the trip file");
        }
        return PlanReport.of(new Planner(session.ephemeris(), session.stars()).plan(trip), session.now());
    }
}
