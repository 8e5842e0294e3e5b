package gloam.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * The page of a command for {@code man}, in the macros of man(7), made of what its help is made of.
 *
 * @param command the command
 */
record ManPage(CommandSpec command) {

    private static final Map<Integer, String> EXIT_CODES = Map.of(App.DONE, "done, also when nothing "
            + "was found", App.BUG, "a bug, with a stack trace", App.BAD_INPUT,
            "input that cannot be used; a line "
            + "for each problem says what to correct", App.NO_DATA, "no ephemeris for that date", App.EMPTY,
            "nothing found, and --fail-if-empty given");

    /** The name of the page, such as {@code gloam-journal-add}. */
    String name() {
        return command.qualifiedName("-");
    }

    /** The page. */
    String text() {
        StringBuilder page = new StringBuilder();
        page.append(".TH ").append(quoted(name().toUpperCase(Locale.ROOT))).append(" 1 \"\" ")
                .append(quoted(command.version()[0])).append(" Gloam\n");
        page.append(".SH NAME\n").append(escaped(name())).append(" \\- ").append(escaped(summary()))
                .append('\n');
        page.append(".SH SYNOPSIS\n.B ").append(escaped(command.qualifiedName())).append('\n')
                .append(escaped(synopsis())).append('\n');
        page.append(".SH DESCRIPTION\n")
                .append(escaped(String.join(" ", command.usageMessage().description())))
                .append('\n');
        commands(page);
        OptionSections.of(command).forEach((heading, options) -> {
            page.append(".SH ").append(quoted(heading.toUpperCase(Locale.ROOT))).append('\n');
            options.forEach(option -> page.append(described(option)));
        });
        page.append(".SH EXAMPLES\n.nf\n");
        List.of(command.usageMessage().footer())
                .forEach(line -> page.append(escaped(line.strip())).append('\n'));
        page.append(".fi\n.SH \"EXIT STATUS\"\n");
        EXIT_CODES.entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(code ->
                page.append(".TP\n.B ").append(code.getKey()).append('\n').append(escaped(code.getValue()))
                .append('\n'));
        return page.toString();
    }

    private String summary() {
        return String.join(" ", command.usageMessage().description()).replaceFirst("\\.$", "");
    }

    private String synopsis() {
        return (command.subcommands().isEmpty() ? "" : "COMMAND ") + "[OPTIONS]"
                + command.positionalParameters().stream()
                .map(parameter -> " [" + parameter.paramLabel() + "]").collect(Collectors.joining());
    }

    private void commands(StringBuilder page) {
        if (!command.subcommands().isEmpty()) {
            page.append(".SH COMMANDS\n");
            command.subcommands().forEach((name, below) -> page.append(".TP\n.B ").append(escaped(name))
                    .append('\n')
                    .append(escaped(description(below))).append('\n'));
        }
    }

    private static String description(CommandLine below) {
        return String.join(" ", below.getCommandSpec().usageMessage().description());
    }

    private static String described(OptionSpec option) {
        String names = Arrays.stream(option.names()).map(name -> "\\fB" + escaped(name) + "\\fR")
                .collect(Collectors.joining(", "));
        return ".TP\n" + names + (option.arity().max() == 0 ? "" : "=\\fI" + escaped(option.paramLabel())
                + "\\fR") + "\n" + escaped(description(option)) + "\n";
    }

    private static String description(ArgSpec argument) {
        return String.join(" ", argument.description())
                .replace("${DEFAULT-VALUE}", String.valueOf(argument.defaultValue())).replace("%%", "%");
    }

    private static String quoted(String text) {
        return '"' + escaped(text) + '"';
    }

    /**
     * Text that shows itself: no backslash, hyphen or point at the start of a line means anything to the
     * macros.
     */
    private static String escaped(String text) {
        String escaped = text.codePoints().mapToObj(c -> switch (c) {
            case '\\' -> "\\e";
            case '-' -> "\\-";
            case '"' -> "\\(dq";
            default -> c < 128 ? Character.toString(c) : String.format(Locale.ROOT, "\\[u%04X]", c);
        }).collect(Collectors.joining());
        return escaped.startsWith(".") || escaped.startsWith("'") ? "\\&" + escaped : escaped;
    }
}
