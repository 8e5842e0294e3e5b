package gloam.cli;

import picocli.AutoComplete;

/** Prints what makes a shell complete commands, options and their values. */
final class CompletionCommand extends Command {

    private final Session session;

    CompletionCommand(Session session) {
        super("completion", "Print the script that makes bash or zsh complete commands and options.",
                "source <(gloam completion)");
        declare(spec -> spec.usageMessage().footerHeading("%nExample, for a line of ~/.bashrc:%n"));
        this.session = session;
    }

    @Override
    public Integer call() {
        out().print(AutoComplete.bash("gloam", App.commandLine(session)));
        return App.DONE;
    }
}
