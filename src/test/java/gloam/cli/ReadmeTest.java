package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * What the README shows is what the program prints, on the real data.
 *
 * <p>In a {@code console} block a line {@code $ java -jar target/gloam.jar …} is run and the lines after it are compared
 * with its standard output; a line {@code …} ends the comparison. {@code -Dgolden.update=true} writes the lines anew.
 */
class ReadmeTest {

    private static final Path README = Path.of("README.md");
    private static final String PROGRAM = "java -jar target/gloam.jar ";
    private static final String PROMPT = "$ ";
    private static final String MORE = "…";
    private static final int LEAST_RUNS = 5;

    @Test
    void readmeShowsWhatTheProgramPrints() throws IOException {
        List<String> readme = Files.readAllLines(README);
        List<String> rewritten = new ArrayList<>();
        int runs = 0;
        boolean console = false;
        for (int at = 0; at < readme.size(); at++) {
            String line = readme.get(at);
            rewritten.add(line);
            console = line.startsWith("```") ? line.equals("```console") : console;
            if (console && line.startsWith(PROMPT) && line.contains(PROGRAM)) {
                List<String> shown = shownAfter(readme, at);
                rewritten.addAll(printed(line, shown));
                at += shown.size();
                runs++;
            }
        }
        if (Boolean.getBoolean("golden.update")) {
            Files.write(README, rewritten);
        }
        assertEquals(String.join("\n", rewritten), String.join("\n", Files.readAllLines(README)));
        assertTrue(runs >= LEAST_RUNS);
    }

    private static List<String> shownAfter(List<String> readme, int at) {
        return readme.subList(at + 1, readme.size()).stream()
                .takeWhile(line -> !line.startsWith("```") && !line.startsWith(PROMPT)).toList();
    }

    /** As many lines of what the command prints as are shown, or all of them. */
    private static List<String> printed(String command, List<String> shown) {
        String words = command.substring(command.indexOf(PROGRAM) + PROGRAM.length());
        Run run = Run.real(Arrays.asList(words.split(" +")));
        assertEquals(0, run.exit(), command + "\n" + run.err());
        List<String> out = run.out().lines().collect(Collectors.toCollection(ArrayList::new));
        if (shown.isEmpty() || !shown.get(shown.size() - 1).equals(MORE)) {
            return out;
        }
        List<String> first = new ArrayList<>(out.subList(0, Math.min(shown.size() - 1, out.size())));
        first.add(MORE);
        return first;
    }
}
