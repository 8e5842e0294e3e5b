package gloam.cli;

import picocli.CommandLine;

/** The journal without a command: says what can be done with it. */
final class JournalCommand extends Command {

    JournalCommand() {
        super("journal", "Keep what was exposed and how it came out, and learn from it.",
                "gloam journal fit --journal demo-data/journal.jsonl --film instant-mono-640");
        declare(spec -> spec.usageMessage().customSynopsis("gloam journal COMMAND [OPTIONS]"));
    }

    /** The command with its own commands. */
    static CommandLine with(Session session) {
        return new JournalCommand()
                .commandLine(new JournalAddCommand(session), new JournalListCommand(session),
                new JournalFitCommand(session), new JournalNextCommand(session),
                new JournalStatsCommand(session), new JournalPackCommand(session),
                new JournalReadCommand(session),
                new JournalExportCommand(session), new JournalJoinCommand(), new JournalRepairCommand(),
                new JournalGuideCommand(session));
    }

    @Override
    public Integer call() {
        line().usage(out());
        return App.DONE;
    }
}
