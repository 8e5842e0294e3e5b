package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What bash itself makes of the script. */
class CompletionTest {

    @TempDir
    private Path folder;

    @BeforeEach
    void script() throws Exception {
        Files.writeString(folder.resolve("gloam.bash"), Run.of("completion").out());
    }

    @Test
    void isValidBashThatLeavesFilesToTheShell() throws Exception {
        assertEquals("", bash("-n", "gloam.bash"));
        assertTrue(Files.readString(folder.resolve("gloam.bash"))
                .contains("\ncomplete -F _complete_gloam -o default gloam "));
    }

    @ParameterizedTest
    @CsvSource({"gloam pl, plan", "gloam jou, journal", "gloam journal gui, guide", "gloam plan --tr, --trip",
        "gloam expose --film instant-m, instant-mono-640", "gloam plan --format htm, html",
        "gloam trail --projection equid, equidistant", "gloam journal add --tone very, very-dark",
        "gloam trail --level satu, saturn", "gloam plan --trip gloa, gloam.bash",
        "gloam nights --out gloa, gloam.bash"})
    void completes(String typed, String completed) throws Exception {
        assertTrue(Arrays.asList(completions(typed).split("\\s+")).contains(completed), completions(typed));
    }

    /**
     * Calls what {@code complete} was given; {@code compopt} works only below a key, so it does nothing here.
     */
    private String completions(String typed) throws Exception {
        List<String> words = List.of(typed.split(" "));
        return bash("-c", "compopt() { :; }; source ./gloam.bash; COMP_WORDS=(" + typed + "); COMP_CWORD="
                + (words.size() - 1)
                + "; COMP_LINE='" + typed + "'; COMP_POINT=" + typed.length()
                + "; $(complete -p gloam | sed -E "
                + "'s/.*-F ([^ ]+).*/\\1/') gloam '" + words.get(words.size() - 1) + "' '"
                + words.get(words.size() - 2) + "'; echo \"${COMPREPLY[@]}\"");
    }

    private String bash(String... arguments) throws Exception {
        ProcessBuilder bash = new ProcessBuilder("bash", "--norc", "--noprofile").directory(folder.toFile())
                .redirectErrorStream(true);
        bash.command().addAll(List.of(arguments));
        Process process = bash.start();
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(60, TimeUnit.SECONDS));
        return text;
    }
}
