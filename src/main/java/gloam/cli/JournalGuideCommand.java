package gloam.cli;

import gloam.report.JournalGuideReport;
import gloam.report.Report;
import picocli.CommandLine.Command;

/** Shows the words for the tone of the sky. */
@Command(name = "guide", description = "Show the words for the tone of the sky, each with a grey to compare with.",
        footer = "gloam journal guide --out guide.txt")
final class JournalGuideCommand extends ReportingCommand {

    JournalGuideCommand(Session session) {
        super(session);
    }

    @Override
    Report report(Session session) {
        return JournalGuideReport.of(session.now());
    }
}
