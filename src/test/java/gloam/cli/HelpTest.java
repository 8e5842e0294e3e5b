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

class HelpTest {

    static Stream<String> commands() {
        return App.commandLine(Run.session()).getSubcommands().keySet().stream();
    }

    @Test
    void allCommandsAreThere() {
        assertEquals(List.of("nights", "sky", "expose", "trail", "proof", "plan", "journal", "check"), commands().toList());
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyHelpHasAnExampleThatParses(String command) {
        Run run = Run.of(command, "--help");
        assertEquals(0, run.exit());
        List<String> examples = run.out().lines().map(String::strip)
                .filter(line -> line.startsWith("gloam " + command + " ")).toList();
        assertEquals(1, examples.size());
        CommandLine gloam = App.commandLine(Run.session());
        String[] args = examples.get(0).split(" ");
        ParseResult parsed = gloam.parseArgs(Arrays.copyOfRange(args, 1, args.length));
        assertEquals(command, parsed.subcommand().commandSpec().name());
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyHelpFitsItsLines(String command) {
        assertTrue(Run.of(command, "--help").out().lines().allMatch(line -> line.length() <= 100));
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyOptionIsDescribed(String command) {
        App.commandLine(Run.session()).getSubcommands().get(command).getCommandSpec().options()
                .forEach(option -> assertFalse(option.description().length == 0, option.longestName()));
    }

    @Test
    void withoutACommandTheHelpShowsWhatToDoNext() {
        Run run = Run.of();
        assertEquals(0, run.exit());
        assertTrue(run.out().contains("gloam plan --trip demo-data/trip.yaml"));
        assertEquals("", run.err());
    }

    @Test
    void versionIsOneLine() {
        Run run = Run.of("--version");
        assertEquals(0, run.exit());
        assertEquals(1, run.out().lines().count());
        assertTrue(run.out().startsWith("gloam "));
    }
}
