package gloam.cli;

import gloam.view.JournalListReport;
import gloam.view.Report;

/** Shows the sheets of the journal. */
final class JournalListCommand extends ReportingCommand {

    private final JournalOptions journal = group(new JournalOptions());

    private final JournalOptions.Choice choice = group(new JournalOptions.Choice());

    JournalListCommand(Session session) {
        super(session, "list",
                "Show the sheets of the journal.",
                "gloam journal list --journal demo-data/journal.jsonl");
    }

    @Override
    Report report(Session session) {
        return JournalListReport.of(choice.of(journal.read(this::note)), session.now());
    }
}
