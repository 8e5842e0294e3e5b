package gloam.cli;

import gloam.report.JournalStatsReport;
import gloam.report.Report;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Counts keepers and what spoils sheets, by pack, film and season. */
@Command(name = "stats", description = "Count keepers and what spoils sheets, by pack, film and season.",
        footer = "gloam journal stats --journal demo-data/journal.jsonl")
final class JournalStatsCommand extends ReportingCommand {

    @Mixin
    private JournalOptions journal;

    @Mixin
    private JournalOptions.Choice choice;

    JournalStatsCommand(Session session) {
        super(session);
    }

    @Override
    Report report(Session session) {
        return JournalStatsReport.of(choice.of(journal.read(this::note)), session.now());
    }
}
