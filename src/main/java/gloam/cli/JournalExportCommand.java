package gloam.cli;

import gloam.report.JournalExportReport;
import gloam.report.Report;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Gives the sheets to other programs. */
@Command(name = "export", description = "Give the sheets to other programs, as comma-separated values or json.",
        footer = "gloam journal export --journal demo-data/journal.jsonl")
final class JournalExportCommand extends ReportingCommand {

    @Mixin
    private JournalOptions journal;

    @Mixin
    private JournalOptions.Choice choice;

    JournalExportCommand(Session session) {
        super(session);
    }

    @Override
    Report report(Session session) {
        return JournalExportReport.of(choice.of(journal.read(this::note)), session.now());
    }
}
