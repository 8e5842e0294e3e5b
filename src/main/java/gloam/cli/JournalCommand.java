package gloam.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The journal without a command: says what can be done with it. */
@Command(name = "journal", mixinStandardHelpOptions = true, versionProvider = Version.class,
        description = "Keep what was exposed and how it came out, and learn from it.",
        synopsisHeading = "Usage: ", customSynopsis = "gloam journal COMMAND [OPTIONS]",
        descriptionHeading = "%n", optionListHeading = "%nOptions:%n", commandListHeading = "%nCommands:%n",
        footerHeading = "%nExample:%n",
        footer = "gloam journal fit --journal demo-data/journal.jsonl --film instant-mono-640")
final class JournalCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    /** The command with its own commands. */
    static CommandLine with(Session session) {
        return new CommandLine(new JournalCommand())
                .addSubcommand(new JournalAddCommand(session))
                .addSubcommand(new JournalListCommand(session))
                .addSubcommand(new JournalFitCommand(session))
                .addSubcommand(new JournalNextCommand(session))
                .addSubcommand(new JournalStatsCommand(session))
                .addSubcommand(new JournalExportCommand(session))
                .addSubcommand(new JournalGuideCommand(session));
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
