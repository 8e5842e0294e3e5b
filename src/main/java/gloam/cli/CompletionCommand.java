package gloam.cli;

import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints what makes a shell complete commands, options and their values. */
@Command(name = "completion", description = "Print the script that makes bash or zsh complete commands and options.",
        mixinStandardHelpOptions = true, versionProvider = Version.class, synopsisHeading = "Usage: ",
        descriptionHeading = "%n", footerHeading = "%nExample, for a line of ~/.bashrc:%n",
        footer = "source <(gloam completion)")
final class CompletionCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    private final Session session;

    CompletionCommand(Session session) {
        this.session = session;
    }

    @Override
    public void run() {
        spec.commandLine().getOut().print(AutoComplete.bash("gloam", App.commandLine(session)));
    }
}
