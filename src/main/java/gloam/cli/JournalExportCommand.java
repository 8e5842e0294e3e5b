package gloam.cli;

import gloam.view.JournalExportReport;
import gloam.view.Report;

/** Gives the sheets to other programs. */
final class JournalExportCommand extends ReportingCommand {

    private final JournalOptions journal = group(new JournalOptions());

    private final JournalOptions.Choice choice = group(new JournalOptions.Choice());

    JournalExportCommand(Session session) {
        super(session, "export",
                "Give the sheets to other programs, as comma-separated values or json.",
                "gloam journal export --journal demo-data/journal.jsonl");
    }

    @Override
    Report report(Session session) {
        return JournalExportReport.of(choice.of(journal.read(this::note)), session.now());
    }
}
