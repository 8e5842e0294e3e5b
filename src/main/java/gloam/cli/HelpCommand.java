package gloam.cli;

import gloam.units.BadInput;
import gloam.units.Nearest;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Explains a command with all its options. */
final class HelpCommand extends Command {

    private final Cell<List<String>> words = new Cell<>();

    private final Option<Boolean> man = flag("--man", "Print a page for man.");

    private final Option<Path> folder = option("--into", "FOLDER", Path.class,
            "With --man: write the pages of the command and its subcommands into this folder.");

    private final Session session;

    HelpCommand(Session session) {
        super("help", "Explain a command with all its options, or every key of the trip file.",
                "gloam help journal add", "gloam help trip-file", "gloam help plan --man | man -l -");
        declare(spec -> spec.addPositional(PositionalParamSpec.builder().paramLabel("COMMAND").arity("0..2")
                .type(List.class).auxiliaryTypes(String.class).getter(words).setter(words)
                .description("The command, such as plan or journal add; or trip-file, for the keys of the "
                + "trip file.").build()));
        this.session = session;
    }

    @Override
    public Integer call() {
        if (folder.given() && !man.given()) {
            throw new BadInput("--into is for pages; add --man");
        }
        if (words.value().orElse(List.of()).equals(List.of(TripFileHelp.TOPIC))) {
            TripFileHelp.print(out(), session.columns());
            return App.DONE;
        }
        CommandLine command = App.commandLine(session);
        for (String word : words.value().orElse(List.of())) {
            command = below(command, word);
        }
        if (folder.given()) {
            write(command, folder.get());
        } else if (man.given()) {
            out().print(new ManPage(command.getCommandSpec()).text());
        } else {
            OptionSections.explain(command);
            command.usage(out());
        }
        return App.DONE;
    }

    private static void write(CommandLine command, Path folder) {
        ManPage page = new ManPage(command.getCommandSpec());
        FromOption.run("--into", () ->
                OutputFile.write(folder.resolve(page.name() + ".1"),
                page.text().getBytes(StandardCharsets.UTF_8)));
        command.getSubcommands().values().forEach(below -> write(below, folder));
    }

    private static CommandLine below(CommandLine command, String word) {
        CommandLine found = command.getSubcommands().get(word);
        if (found == null) {
            List<String> known = List.copyOf(command.getSubcommands().keySet());
            throw new BadInput("unknown command \"" + word + "\"; " + Nearest.question(word, known)
                    .orElse(known.isEmpty()
                    ? command.getCommandName() + " has none" : "it is one of " + String.join(", ", known)));
        }
        return found;
    }
}
