package gloam.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.IHelpSectionRenderer;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/**
 * The options in a command's help: its own one by one; those it shares with others by name alone, or all
 * explained.
 */
final class OptionSections implements IHelpSectionRenderer {

    private static final String OWN = "Options";
    private static final String MORE = "More";
    private static final String END = System.lineSeparator();

    /** Options that several commands share, and the heading they stand under. */
    private static final Map<Class<?>, String> SHARED = Map.of(SiteOptions.class, "Place",
            CameraOptions.class, "Camera", TripCameraOptions.class, "Camera",
            FilmOptions.class, "Film", FittedFilm.class, "Film", OutputOptions.class, "Output",
            SkyDataOptions.class, MORE, StandardOptions.class, MORE);

    private final boolean explained;

    private OptionSections(boolean explained) {
        this.explained = explained;
    }

    /** Makes the help of a command and those below it one screen long. */
    static void shorten(CommandLine command) {
        lay(command, new OptionSections(false));
        for (CommandLine below : command.getSubcommands().values()) {
            shorten(below);
        }
    }

    /** Makes the help of a command explain every option. */
    static void explain(CommandLine command) {
        lay(command, new OptionSections(true));
    }

    private static void lay(CommandLine command, OptionSections sections) {
        command.getHelpSectionMap().put(UsageMessageSpec.SECTION_KEY_OPTION_LIST_HEADING, new Nothing());
        command.getHelpSectionMap().put(UsageMessageSpec.SECTION_KEY_OPTION_LIST, sections);
    }

    /** The options of a command by the heading they stand under, its own first. */
    static Map<String, List<OptionSpec>> of(CommandSpec command) {
        Map<String, String> shared = new LinkedHashMap<>();
        headings(command, shared);
        Map<String, List<OptionSpec>> sections = new LinkedHashMap<>();
        List.of(OWN, "Place", "Camera", "Film", "Output", MORE).forEach(heading ->
                sections.put(heading, new ArrayList<>()));
        command.options().forEach(option -> sections.get(shared.getOrDefault(option.longestName(), OWN))
                .add(option));
        sections.values().removeIf(List::isEmpty);
        return sections;
    }

    private static void headings(CommandSpec of, Map<String, String> shared) {
        of.mixins().forEach((name, mixin) -> {
            headings(mixin, shared);
            String heading = SHARED.get(mixin.userObject().getClass());
            if (heading != null) {
                mixin.options().forEach(option -> shared.put(option.longestName(), heading));
            }
        });
    }

    @Override
    public String render(Help help) {
        Map<String, List<OptionSpec>> sections = of(help.commandSpec());
        StringBuilder text = new StringBuilder();
        sections.forEach((heading, options) -> {
            boolean inFull = explained || heading.equals(OWN);
            text.append(inFull ? END + heading + ":" + END + help.optionListExcludingGroups(options)
                    : blank(heading, sections)
                    + named(heading, options, help.commandSpec().usageMessage().width()));
        });
        if (!explained && sections.size() > 2) {
            text.append("gloam help").append(help.commandSpec().qualifiedName().substring("gloam".length()))
                    .append(" explains all of them.").append(END);
        }
        return text.toString();
    }

    /** A blank line before the first section of names alone. */
    private static String blank(String heading, Map<String, List<OptionSpec>> sections) {
        return sections.keySet().stream().filter(other -> !other.equals(OWN)).findFirst().orElseThrow()
                .equals(heading) ? END : "";
    }

    /** The names of options in lines that fit. */
    private static String named(String heading, List<OptionSpec> options, int width) {
        StringBuilder text = new StringBuilder();
        StringBuilder line = new StringBuilder(heading + ":");
        for (OptionSpec option : options) {
            if (line.length() + 1 + named(option).length() > width) {
                text.append(line).append(END);
                line = new StringBuilder(" ");
            }
            line.append(' ').append(named(option));
        }
        return text.append(line).append(END).toString();
    }

    private static String named(OptionSpec option) {
        return Arrays.stream(option.names()).collect(Collectors.joining(", "))
                + (option.arity().max() == 0 ? "" : " " + option.paramLabel());
    }

    /** A heading left out. */
    private static final class Nothing implements IHelpSectionRenderer {

        @Override
        public String render(Help help) {
            return "";
        }
    }
}
