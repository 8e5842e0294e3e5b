package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.ParseResult;

/** The help of the journal's commands, which stand a level deeper than the others. */
class JournalHelpTest {

    static Stream<String> commands() {
        return journal().getSubcommands().keySet().stream();
    }

    private static CommandLine journal() {
        return App.commandLine(Run.session()).getSubcommands().get("journal");
    }

    @Test
    void allCommandsAreThere() {
        assertEquals(List.of("add", "list", "fit", "next", "stats", "pack", "read", "export", "join",
                "repair", "guide"), commands().toList());
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyHelpHasAnExampleThatParsesAndFits(String command) {
        Run run = Run.of("journal", command, "--help");
        assertEquals(0, run.exit());
        assertTrue(run.out().lines().allMatch(line -> line.length() <= 100));
        assertTrue(run.out().lines().count() <= 41, run.out());
        String example = run.out().substring(run.out().indexOf("Example:") + "Example:".length()).strip();
        assertTrue(example.startsWith("gloam journal " + command + " "), example);
        String[] args = example.split("\\s+");
        ParseResult parsed = App.commandLine(Run.session())
                .parseArgs(Arrays.copyOfRange(args, 1, args.length));
        assertEquals(command, parsed.subcommand().subcommand().commandSpec().name());
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyOptionIsDescribed(String command) {
        journal().getSubcommands().get(command).getCommandSpec().options()
                .forEach(option -> assertFalse(option.description().length == 0, option.longestName()));
    }
}
