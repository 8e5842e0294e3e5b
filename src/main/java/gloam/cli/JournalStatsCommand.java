package gloam.cli;

import gloam.answer.Keepers;
import gloam.view.JournalStatsReport;
import gloam.view.Report;

/** Counts keepers and what spoils sheets, by pack, film and season. */
final class JournalStatsCommand extends ReportingCommand {

    private final JournalOptions journal = group(new JournalOptions());

    private final JournalOptions.Choice choice = group(new JournalOptions.Choice());

    JournalStatsCommand(Session session) {
        super(session, "stats",
                "Count keepers and what spoils sheets, by pack, film and season.",
                "gloam journal stats --journal demo-data/journal.jsonl");
    }

    @Override
    Report report(Session session) {
        return JournalStatsReport.of(Keepers.of(choice.of(journal.read(this::note))), session.now());
    }
}
