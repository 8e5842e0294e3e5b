package gloam.cli;

import gloam.answer.TripCheck;
import gloam.store.TripFile;
import gloam.units.BadInput;
import gloam.view.CheckReport;
import gloam.view.Report;

/** Says how a trip file was understood. */
final class CheckCommand extends ReportingCommand {

    private final SiteOptions place = group(new SiteOptions());

    CheckCommand(Session session) {
        super(session, "check",
                "Show how a trip file is understood and which defaults it uses.",
                "gloam check --trip demo-data/trip.yaml");
    }

    @Override
    Report report(Session session) {
        TripFile.Reading reading = place.reading(session).orElseThrow(() ->
                new BadInput("there is nothing to check; give --trip FILE"));
        return CheckReport.of(TripCheck.of(reading.trip(), reading.defaultsUsed(),
                reading.journal().map(named -> named.file().toString()), reading.batch()), session.now());
    }
}
