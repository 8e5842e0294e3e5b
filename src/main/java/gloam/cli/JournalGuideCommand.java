package gloam.cli;

import gloam.answer.ToneGuide;
import gloam.view.JournalGuideReport;
import gloam.view.Report;

/** Shows the words for the tone of the sky. */
final class JournalGuideCommand extends ReportingCommand {

    JournalGuideCommand(Session session) {
        super(session, "guide",
                "Show the words for the tone of the sky, each with a grey to compare with.",
                "gloam journal guide --out guide.txt");
    }

    @Override
    Report report(Session session) {
        return JournalGuideReport.of(ToneGuide.all(), session.now());
    }
}
