package gloam.cli;

import gloam.store.Nearest;
import gloam.units.BadInput;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Explains a command with all its options. */
@Command(name = "help", description = "Explain a command with all its options.", mixinStandardHelpOptions = true,
        versionProvider = GloamCommand.Version.class, synopsisHeading = "Usage: ", descriptionHeading = "%n",
        parameterListHeading = "%n", footerHeading = "%nExamples:%n",
        footer = {"gloam help journal add", "gloam help plan --man | man -l -"})
final class HelpCommand implements Runnable {

    @Parameters(paramLabel = "COMMAND", arity = "0..2", description = "The command, such as plan or journal add.")
    private List<String> words = new ArrayList<>();

    @Option(names = "--man", description = "As a page for man.")
    private boolean man;

    @Spec
    private CommandSpec spec;

    private final Session session;

    HelpCommand(Session session) {
        this.session = session;
    }

    @Override
    public void run() {
        CommandLine command = App.commandLine(session);
        for (String word : words) {
            command = below(command, word);
        }
        if (man) {
            spec.commandLine().getOut().print(new ManPage(command.getCommandSpec()).text());
        } else {
            OptionSections.explain(command);
            command.usage(spec.commandLine().getOut());
        }
    }

    private static CommandLine below(CommandLine command, String word) {
        CommandLine found = command.getSubcommands().get(word);
        if (found == null) {
            List<String> known = List.copyOf(command.getSubcommands().keySet());
            throw new BadInput("unknown command \"" + word + "\"; " + Nearest.to(word, known)
                    .map(near -> "did you mean " + near + "?").orElse(known.isEmpty()
                    ? command.getCommandName() + " has none" : "it is one of " + String.join(", ", known)));
        }
        return found;
    }
}
