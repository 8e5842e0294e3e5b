package gloam.cli;

import gloam.report.JournalListReport;
import gloam.report.Report;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Shows the sheets of the journal. */
@Command(name = "list", description = "Show the sheets of the journal.",
        footer = "gloam journal list --journal demo-data/journal.jsonl")
final class JournalListCommand extends ReportingCommand {

    @Mixin
    private JournalOptions journal;

    @Mixin
    private JournalOptions.Choice choice;

    JournalListCommand(Session session) {
        super(session);
    }

    @Override
    Report report(Session session) {
        return JournalListReport.of(choice.of(journal.read(this::note)), session.now());
    }
}
