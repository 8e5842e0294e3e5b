package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

class ManPageTest {

    private static final Path GROFF = Path.of("/usr/bin/groff");

    @TempDir
    private Path folder;

    static Stream<CommandLine> commands() {
        return below(App.commandLine(Run.session()));
    }

    private static Stream<CommandLine> below(CommandLine command) {
        return Stream.concat(Stream.of(command),
                command.getSubcommands().values().stream().flatMap(ManPageTest::below));
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyCommandHasAPageWithEveryOption(CommandLine command) {
        String page = new ManPage(command.getCommandSpec()).text();
        assertTrue(page.startsWith(".TH \"" + command.getCommandSpec().qualifiedName("-")
                .toUpperCase(java.util.Locale.ROOT)
                .replace("-", "\\-") + "\" 1 "), page);
        List.of(".SH NAME", ".SH SYNOPSIS", ".SH DESCRIPTION", ".SH EXAMPLES", ".SH \"EXIT STATUS\"")
                .forEach(section -> assertEquals(1, page.lines().filter(section::equals).count(), section));
        command.getCommandSpec().options().forEach(option -> assertTrue(
                page.contains("\\fB" + option.longestName().replace("-", "\\-") + "\\fR"),
                option.longestName()));
        assertTrue(page.chars().allMatch(c -> c < 128), "any troff reads it");
        assertTrue(page.lines().noneMatch(line -> line.contains("${") || line.startsWith(". ")), page);
    }

    /** Where the machine has groff, as Debian does, it has nothing to complain of. */
    @ParameterizedTest
    @MethodSource("commands")
    void everyPageRenders(CommandLine command) throws Exception {
        Path page = folder.resolve("page.1");
        Files.writeString(page, new ManPage(command.getCommandSpec()).text());
        if (!Files.exists(GROFF)) {
            assertTrue(Files.size(page) > 0);
            return;
        }
        Process groff = new ProcessBuilder(GROFF.toString(), "-man", "-Tutf8", "-ww", "-P-cbou",
                page.toString())
                .redirectErrorStream(true).start();
        String text = new String(groff.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, groff.waitFor());
        assertTrue(!text.contains("warning") && !text.contains("error:"), text);
        assertTrue(text.replaceAll("\\s+", " ")
                .contains(" NAME " + command.getCommandSpec().qualifiedName("-") + " - "), text);
        assertTrue(text.contains("--help"), text);
    }

    @Test
    void allPagesAreWrittenIntoAFolder() throws IOException {
        assertEquals(0, Run.of("help", "--man", "--into", folder.toString()).exit());
        for (CommandLine command : commands().toList()) {
            ManPage page = new ManPage(command.getCommandSpec());
            assertEquals(page.text(), Files.readString(folder.resolve(page.name() + ".1")));
        }
        assertEquals(2, Run.of("help", "--into", folder.toString()).exit());
    }

    @ParameterizedTest
    @MethodSource("commands")
    void helpPrintsThePage(CommandLine command) throws IOException {
        String[] words = command.getCommandSpec().qualifiedName(" ").split(" ");
        String[] args = Stream.concat(Stream.of("help"),
                Stream.concat(Stream.of(words).skip(1), Stream.of("--man"))).toArray(String[]::new);
        assertEquals(new ManPage(command.getCommandSpec()).text(), Run.of(args).out());
    }
}
