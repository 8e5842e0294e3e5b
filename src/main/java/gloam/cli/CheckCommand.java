package gloam.cli;

import gloam.report.CheckReport;
import gloam.report.Report;
import gloam.store.TripFile;
import gloam.units.BadInput;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Says how a trip file was understood. */
@Command(name = "check", description = "Tell how a trip file is understood and which defaults it uses.",
        footer = "gloam check --trip demo-data/trip.yaml")
final class CheckCommand extends ReportingCommand {

    @Mixin
    private SiteOptions place;

    CheckCommand(Session session) {
        super(session);
    }

    @Override
    Report report(Session session) {
        TripFile.Reading reading = place.reading().orElseThrow(() ->
                new BadInput("there is nothing to check; give --trip FILE"));
        return CheckReport.of(reading.trip(), reading.defaultsUsed(), session.now());
    }
}
