package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.fail;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.random.RandomGenerator;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import picocli.CommandLine;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.ObjectMapper;

/**
 * Whatever the options and the files are, a run ends soon in a result or in lines that the user can act on.
 *
 * <p>{@code -Dgloam.fuzz=N} runs about N cases in place of {@value #CASES}; {@code -Dgloam.fuzz.seed=SEED} replays the case
 * of a seed that a failure names.
 */
class FuzzTest {

    private static final int CASES = 20_500;
    private static final long FIRST_SEED = 20270208;
    private static final double SHARE_OF_DEAR = 0.01;
    private static final int MOST_FAILURES = 5;

    /** A case takes milliseconds, the dearest a second or two. */
    private static final long MOST_CPU_S = 20;
    /** Thousands of cases take a minute; only a hang takes so long, even where the machine is busy with something else. */
    private static final Duration MOST = Duration.ofSeconds(1200 + total() / 20);
    /** No case needs more than a few tens of MB; what is allocated in all bounds what is held at any time. */
    private static final long MOST_ALLOCATED_BYTES = 1L << 30;
    private static final int LONGEST_LINE = 700;

    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    @TempDir
    Path folder;

    private final CommandLine gloam = App.commandLine(Run.session());
    private final List<String> failures = new ArrayList<>();
    private volatile String current = "";

    @Test
    void options() {
        fuzz((int) (total() * 0.38), random -> FuzzOptions.of(gloam, false, random));
    }

    @Test
    void optionsOfDearerCommands() {
        fuzz((int) (total() * SHARE_OF_DEAR), random -> FuzzOptions.of(gloam, true, random));
    }

    @ParameterizedTest
    @EnumSource
    void files(FuzzFiles.Kind kind) {
        Map<FuzzFiles.Kind, Double> shares = new EnumMap<>(Map.of(FuzzFiles.Kind.PLANETS, 0.01, FuzzFiles.Kind.FINALS, 0.02));
        fuzz((int) (total() * shares.getOrDefault(kind, 0.06)), random -> FuzzFiles.of(kind, random));
    }

    private static int total() {
        return Integer.getInteger("gloam.fuzz", CASES);
    }

    private void fuzz(int count, Function<RandomGenerator, FuzzCase> draw) {
        assertTimeoutPreemptively(MOST, () -> seeds(count).takeWhile(seed -> failures.size() < MOST_FAILURES)
                .forEach(seed -> {
                    FuzzCase drawn = draw.apply(new SplittableRandom(seed));
                    current = "seed " + seed + ": " + drawn;
                    try {
                        run(drawn);
                    } catch (Throwable failed) {
                        failures.add(current + "\n    " + failed);
                    }
                }), () -> "hangs at " + current);
        assertEquals(List.of(), failures, () -> String.join("\n", failures));
    }

    private static LongStream seeds(int count) {
        return Optional.ofNullable(Long.getLong("gloam.fuzz.seed")).map(LongStream::of)
                .orElse(LongStream.range(FIRST_SEED, FIRST_SEED + count));
    }

    private void run(FuzzCase drawn) throws IOException {
        Path place = Files.createTempDirectory(folder, "case");
        drawn.write(place);
        Files.createDirectory(place.resolve("folder.txt"));
        long allocatedBefore = THREADS.getCurrentThreadAllocatedBytes();
        long cpuBefore = THREADS.getCurrentThreadCpuTime();
        Run run = Run.on(gloam, drawn.args(place));
        long allocatedBytes = THREADS.getCurrentThreadAllocatedBytes() - allocatedBefore;
        long cpuS = (THREADS.getCurrentThreadCpuTime() - cpuBefore) / 1_000_000_000;
        Verdict verdict = new Verdict(run, place, drawn);
        verdict.check();
        if (allocatedBytes > MOST_ALLOCATED_BYTES || cpuS > MOST_CPU_S) {
            fail("took " + cpuS + " s and " + allocatedBytes / (1 << 20) + " MiB");
        }
        try (Stream<Path> files = Files.walk(place)) {
            files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
        }
    }

    /** What a run must be like. */
    private record Verdict(Run run, Path place, FuzzCase drawn) {

        void check() throws IOException {
            require(List.of(0, 2, 3).contains(run.exit()) || run.exit() == 4 && drawn.args().contains("--fail-if-empty"),
                    "exit " + run.exit());
            require(!run.err().contains("\tat ") && !run.err().contains("Exception"), "a trace or a class's name");
            run.err().lines().forEach(this::checkLine);
            if (run.exit() == 2 || run.exit() == 3) {
                require(run.out().isEmpty(), "standard output beside an error");
                require(run.err().lines().filter(line -> !line.startsWith("note: ")).findFirst().isPresent(), "no word of why");
                unchanged();
            } else {
                complete();
            }
        }

        private void checkLine(String line) {
            require(!line.isBlank() && line.length() - place.toString().length() <= LONGEST_LINE, "a blank or endless line");
            require(line.codePoints().noneMatch(point -> Character.isISOControl(point) || point == 0x202e), "control character");
        }

        /** After an error every file is as it was and no other is there. */
        private void unchanged() throws IOException {
            for (Path file : files()) {
                String name = file.getFileName().toString();
                boolean emptyJournal = name.endsWith(".jsonl") && Files.size(file) == 0;
                require(drawn.files().containsKey(name) || emptyJournal, "left behind: " + name);
                require(emptyJournal || Arrays.equals(drawn.files().get(name), Files.readAllBytes(file)), "changed: " + name);
            }
        }

        /** After a success no file is half written. */
        private void complete() throws IOException {
            for (Path file : files()) {
                String name = file.getFileName().toString();
                require(!name.endsWith(".part"), "left behind: " + name);
                if (!drawn.files().containsKey(name)) {
                    require(whole(name, Files.readAllBytes(file)), "not whole: " + name);
                }
            }
        }

        private static boolean whole(String name, byte[] content) {
            String text = new String(content, StandardCharsets.ISO_8859_1).stripTrailing();
            return switch (name.substring(name.lastIndexOf('.') + 1)) {
                case "svg" -> text.endsWith("</svg>");
                case "html" -> text.endsWith("</html>");
                case "ics" -> text.endsWith("END:VCALENDAR");
                case "png" -> text.endsWith("IEND\u00aeB`\u0082");
                case "json" -> isJson(content);
                default -> content[content.length - 1] == '\n';
            };
        }

        private static boolean isJson(byte[] content) {
            try {
                return new ObjectMapper().readTree(content).isObject();
            } catch (JacksonException broken) {
                return false;
            }
        }

        private List<Path> files() {
            try (Stream<Path> files = Files.walk(place)) {
                return files.filter(Files::isRegularFile).toList();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        private void require(boolean met, String otherwise) {
            if (!met) {
                fail(otherwise + "\n    exit " + run.exit() + "; standard error: "
                        + run.err().substring(0, Math.min(1500, run.err().length())));
            }
        }
    }
}
