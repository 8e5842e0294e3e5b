package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.ParseResult;

class HelpTest {

    /**
     * Lines of a terminal window as desktops open it larger than the 24 of old: common practice, no source.
     */
    private static final int SCREEN_LINES = 40;

    static Stream<String> commands() {
        return App.commandLine(Run.session()).getSubcommands().keySet().stream();
    }

    @Test
    void allCommandsAreThere() {
        assertEquals(List.of("init", "nights", "sky", "measure", "expose", "trail", "proof", "plan",
                "journal", "check", "schema", "help", "completion"), commands().toList());
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyHelpHasAnExampleThatParses(String command) {
        Run run = Run.of(command, "--help");
        assertEquals(0, run.exit());
        String example = run.out().substring(run.out().indexOf("\nExample")).lines().skip(2)
                .collect(Collectors.joining(" ")).replaceFirst("\\|.*| gloam help plan.*", "")
                .replaceAll("source <|\\)|\\(", "");
        CommandLine gloam = App.commandLine(Run.session());
        String[] args = example.split(" ");
        assertEquals("gloam", args[0]);
        ParseResult parsed = gloam.parseArgs(Arrays.copyOfRange(args, 1, args.length));
        assertEquals(command, parsed.subcommand().commandSpec().name());
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyHelpFitsOneScreen(String command) {
        String help = Run.of(command, "--help").out();
        assertTrue(help.lines().allMatch(line -> line.length() <= 100));
        assertTrue(help.lines().count() <= SCREEN_LINES, help);
    }

    @ParameterizedTest
    @MethodSource("commands")
    void helpNamesEveryOptionAndTheCommandHelpExplainsIt(String command) {
        CommandLine.Model.CommandSpec spec = App.commandLine(Run.session()).getSubcommands().get(command)
                .getCommandSpec();
        String shortly = Run.of(command, "--help").out();
        String inFull = Run.of("help", command).out();
        assertTrue(inFull.lines().allMatch(line -> line.length() <= 100));
        spec.options().forEach(option -> {
            String name = option.negatable() ? option.longestName().substring(2) : option.longestName();
            assertTrue(shortly.contains(name), option.longestName());
            assertTrue(inFull.contains(name), option.longestName());
            String begin = option.description()[0].split("[ %$]")[0];
            assertTrue(inFull.contains(begin), begin);
        });
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyOptionIsDescribed(String command) {
        App.commandLine(Run.session()).getSubcommands().get(command).getCommandSpec().options()
                .forEach(option -> assertFalse(option.description().length == 0, option.longestName()));
    }

    @Test
    void withoutACommandTheProgramShowsWhatToDoNext(@TempDir Path folder) {
        Run run = Run.of();
        assertEquals(0, run.exit());
        assertEquals("", run.err());
        List<String> examples = run.out().lines().filter(line -> line.startsWith("  gloam "))
                .map(String::strip).toList();
        assertEquals(1, examples.size());
        List<String> words = new ArrayList<>(List.of(examples.get(0).split(" ")));
        words.remove(0);
        words.add(1, folder.resolve("trip.yaml").toString());
        Run example = Run.of(words);
        assertEquals("", example.err());
        assertEquals(0, example.exit());
    }

    @Test
    void theKeysOfTheTripFileAreListed() {
        Run run = Run.of("help", "trip-file");
        assertEquals(0, run.exit());
        assertTrue(run.out().lines().allMatch(line -> line.length() <= 100));
        assertTrue(run.out().contains("\nsites[].latitude-deg               degrees, -90 … 90; required; "
                + "e.g. 41.18\n"), run.out());
    }

    @Test
    void helpForAnUnknownCommandOffersTheNearest() {
        assertEquals(2, Run.of("help", "plam").exit());
        assertTrue(Run.of("help", "plam").err().startsWith("unknown command \"plam\"; did you mean plan?"));
        assertTrue(Run.of("help", "plan", "x").err().startsWith("unknown command \"x\"; plan has none"));
        assertEquals(0, Run.of("help").exit());
    }

    @Test
    void versionIsOneLine() {
        Run run = Run.of("--version");
        assertEquals(0, run.exit());
        assertEquals(1, run.out().lines().count());
        assertTrue(run.out().startsWith("gloam "));
    }
}
