package gloam.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;

/** A command with its options. */
abstract class Command extends OptionGroup implements Callable<Integer> {

    private final String name;
    private CommandLine line;

    /** A command that the help explains in a sentence and at least one example. */
    Command(String name, String description, String... examples) {
        this.name = name;
        declare(spec -> spec.name(name).versionProvider(new Version()).usageMessage()
                .description(description).descriptionHeading("%n")
                .synopsisHeading("Usage: ").abbreviateSynopsis(true).sortOptions(false)
                .parameterListHeading("%n").optionListHeading("%nOptions:%n")
                .commandListHeading("%nCommands:%n")
                .footerHeading(examples.length == 1 ? "%nExample:%n" : "%nExamples:%n").footer(examples));
    }

    /** The commands below it. */
    List<Command> below() {
        return List.of();
    }

    /** The command as picocli runs it, with those below it. */
    final CommandLine commandLine() {
        line = new CommandLine(spec()
                .addMixin(StandardOptions.class.getSimpleName(), new StandardOptions().spec()));
        for (Command command : below()) {
            line.addSubcommand(command.name, command.commandLine());
        }
        return line;
    }

    /** The command line it was read from. */
    final CommandLine line() {
        return line;
    }

    final PrintWriter out() {
        return line.getOut();
    }

    final PrintWriter err() {
        return line.getErr();
    }
}
