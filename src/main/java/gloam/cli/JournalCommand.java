package gloam.cli;

import java.util.List;

/** The journal without a command: says what can be done with it. */
final class JournalCommand extends Command {

    private final Session session;

    JournalCommand(Session session) {
        super("journal", "Keep what was exposed and how it came out, and learn from it.",
                "gloam journal fit --journal demo-data/journal.jsonl --film instant-mono-640");
        this.session = session;
        declare(spec -> spec.usageMessage().customSynopsis("gloam journal COMMAND [OPTIONS]"));
    }

    @Override
    List<Command> below() {
        return List.of(new JournalAddCommand(session), new JournalListCommand(session),
                new JournalFitCommand(session), new JournalNextCommand(session),
                new JournalStatsCommand(session), new JournalPackCommand(session),
                new JournalReadCommand(session), new JournalExportCommand(session), new JournalJoinCommand(),
                new JournalRepairCommand(), new JournalGuideCommand(session));
    }

    @Override
    public Integer call() {
        line().usage(out());
        return App.DONE;
    }
}
