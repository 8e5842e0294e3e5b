package gloam.cli;

import gloam.store.Nearest;
import gloam.units.BadInput;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Explains a command with all its options. */
@Command(name = "help", description = "Explain a command with all its options.", mixinStandardHelpOptions = true,
        versionProvider = Version.class, synopsisHeading = "Usage: ", descriptionHeading = "%n",
        parameterListHeading = "%n", footerHeading = "%nExamples:%n",
        footer = {"gloam help journal add", "gloam help plan --man | man -l -"})
final class HelpCommand implements Runnable {

    @Parameters(paramLabel = "COMMAND", arity = "0..2", description = "The command, such as plan or journal add.")
    private List<String> words = new ArrayList<>();

    @Option(names = "--man", description = "As a page for man.")
    private boolean man;

    @Option(names = "--into", paramLabel = "FOLDER",
            description = "With --man: the pages of the command and all below it, a file each, in that folder.")
    private Optional<Path> folder;

    @Spec
    private CommandSpec spec;

    private final Session session;

    HelpCommand(Session session) {
        this.session = session;
    }

    @Override
    public void run() {
        if (folder.isPresent() && !man) {
            throw new BadInput("--into tells where pages go; add --man");
        }
        CommandLine command = App.commandLine(session);
        for (String word : words) {
            command = below(command, word);
        }
        if (folder.isPresent()) {
            write(command, folder.get());
        } else if (man) {
            spec.commandLine().getOut().print(new ManPage(command.getCommandSpec()).text());
        } else {
            OptionSections.explain(command);
            command.usage(spec.commandLine().getOut());
        }
    }

    private static void write(CommandLine command, Path folder) {
        ManPage page = new ManPage(command.getCommandSpec());
        FromOption.run("--into", () ->
                OutputFile.write(folder.resolve(page.name() + ".1"), page.text().getBytes(StandardCharsets.UTF_8)));
        command.getSubcommands().values().forEach(below -> write(below, folder));
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
