package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.store.TripFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What README and guide show is what the program prints, on the real data, and what they show of trip files
 * is read.
 *
 * <p>In a {@code console} block a line {@code $ java -jar target/gloam.jar …} or {@code $ gloam …} is run and
 * the lines after it are compared with its standard output; a line {@code …} ends the comparison. Files whose
 * names begin with {@code my-} are the reader's own; here they stand in {@code target/guide}. {@code
 * -Dgolden.update=true} writes the lines anew. A {@code yaml} block is a trip beside the demo's files, or the
 * wishes of the demo.
 */
class ReadmeTest {

    private static final Path README = Path.of("README.md");
    private static final Path GUIDE = Path.of("src/docs");
    private static final Path DEMO = Path.of("demo-data");
    private static final Path WRITTEN = Path.of("target/guide");
    private static final String JAR = "java -jar target/gloam.jar ";
    private static final String PROGRAM = "gloam ";
    private static final String PROMPT = "$ ";
    private static final String FENCE = "```";
    private static final String MORE = "…";
    private static final String OWN = "my-";
    private static final int LEAST_RUNS = 5;
    private static final int PAGES = 7;
    private static final int WIDTH = 120;

    @TempDir
    private Path folder;

    static Stream<Path> documents() throws IOException {
        try (Stream<Path> pages = Files.list(GUIDE)) {
            return Stream.concat(Stream.of(README), pages.filter(page -> page.toString().endsWith(".md"))
                    .sorted())
                    .toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("documents")
    void showsWhatTheProgramPrints(Path document) throws IOException {
        emptied(WRITTEN);
        List<String> lines = Files.readAllLines(document);
        List<String> rewritten = new ArrayList<>();
        int runs = 0;
        boolean console = false;
        for (int at = 0; at < lines.size(); at++) {
            String line = lines.get(at);
            rewritten.add(line);
            console = line.startsWith(FENCE) ? line.equals(FENCE + "console") : console;
            if (console && line.startsWith(PROMPT)) {
                List<String> shown = shownAfter(lines, at);
                rewritten.addAll(printed(line, shown));
                at += shown.size();
                runs++;
            }
        }
        if (Boolean.getBoolean("golden.update")) {
            Files.write(document, rewritten);
        }
        assertEquals(String.join("\n", rewritten), String.join("\n", Files.readAllLines(document)));
        assertTrue(runs >= (document.equals(README) ? LEAST_RUNS : 1), "few commands in " + document);
    }

    @ParameterizedTest
    @MethodSource("documents")
    void tripsAreRead(Path document) throws IOException {
        try (Stream<Path> files = Files.list(DEMO)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, folder.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING);
            }
        }
        Files.writeString(folder.resolve("clouds.csv"), "time,cloud_fraction\n"
                + "2027-02-08T18:00+01:00,0.2\n2027-02-09T06:00+01:00,0.4\n");
        String demo = Files.readString(DEMO.resolve("trip.yaml"));
        for (String block : blocks(Files.readAllLines(document), "yaml")) {
            Path trip = folder.resolve("shown.yaml");
            Files.writeString(trip, block.startsWith("sites:")
                    ? block + "\n" + demo.substring(demo.indexOf("\nnights:")) : block.startsWith("wishes:")
                    ? demo.substring(0, demo.indexOf("\nwishes:") + 1) + block
                    : block.contains("sites:") ? block : demo + "\n" + block);
            assertTrue(!TripFile.read(trip).trip().wishes().isEmpty());
        }
    }

    @ParameterizedTest
    @MethodSource("documents")
    void everyBlockIsOneOfThese(Path document) throws IOException {
        List<String> lines = Files.readAllLines(document);
        List<String> fences = lines.stream().filter(line -> line.startsWith(FENCE)).toList();
        for (int i = 0; i < fences.size(); i++) {
            assertTrue(i % 2 == 0 ? fences.get(i).matches("```(console|yaml)") : fences.get(i).equals(FENCE),
                    document + ": " + fences.get(i));
        }
        blocks(lines, "console").forEach(block -> assertTrue(block.startsWith(PROMPT), block));
    }

    /** Lines of README, guide and page for developers; rows of tables and commands are not broken. */
    @ParameterizedTest
    @MethodSource("wrapped")
    void linesWrap(Path document) throws IOException {
        for (String line : Files.readAllLines(document)) {
            boolean whole = !document.equals(README) && (line.startsWith("| ") || line.startsWith(PROMPT));
            assertTrue(whole || line.length() <= WIDTH, document + ": " + line);
        }
    }

    static Stream<Path> wrapped() throws IOException {
        return Stream.concat(documents(), Stream.of(Path.of("DEVELOPERS.md")));
    }

    @Test
    void theGuideIsThere() throws IOException {
        assertEquals(PAGES + 1, documents().count());
    }

    private static List<String> blocks(List<String> lines, String kind) {
        List<String> blocks = new ArrayList<>();
        for (int at = 0; at < lines.size(); at++) {
            if (lines.get(at).equals(FENCE + kind)) {
                blocks.add(lines.subList(at + 1, lines.size()).stream()
                        .takeWhile(line -> !line.startsWith(FENCE))
                        .collect(Collectors.joining("\n", "", "\n")));
            }
        }
        return blocks;
    }

    private static void emptied(Path written) throws IOException {
        Files.createDirectories(written);
        try (Stream<Path> files = Files.list(written)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
    }

    private static List<String> shownAfter(List<String> lines, int at) {
        return lines.subList(at + 1, lines.size()).stream()
                .takeWhile(line -> !line.startsWith(FENCE) && !line.startsWith(PROMPT)).toList();
    }

    /** As many lines of what the command prints as are shown, or all of them. */
    private static List<String> printed(String command, List<String> shown) {
        String words = command.substring(PROMPT.length()).replace(JAR, PROGRAM);
        assertTrue(words.startsWith(PROGRAM), "no command of Gloam: " + command);
        Run run = Run.real(Stream.of(words.substring(PROGRAM.length()).split(" +"))
                .map(word -> word.startsWith(OWN) ? WRITTEN.resolve(word).toString() : word).toList());
        assertEquals(0, run.exit(), command + "\n" + run.err());
        List<String> out = run.out().replace(WRITTEN + "/", "").lines()
                .collect(Collectors.toCollection(ArrayList::new));
        if (shown.isEmpty() || !shown.get(shown.size() - 1).equals(MORE)) {
            return out;
        }
        List<String> first = new ArrayList<>(out.subList(0, Math.min(shown.size() - 1, out.size())));
        first.add(MORE);
        return first;
    }
}
