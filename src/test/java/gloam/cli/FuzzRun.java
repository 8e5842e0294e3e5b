package gloam.cli;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import picocli.CommandLine;

/**
 * Draws cases of every kind from seeds and runs them, in a process of its own whose memory is small. Failures
 * and what was run stand on standard output; the exit code is 1 where anything failed.
 */
final class FuzzRun {

    private static final long FIRST_SEED = 20270208;
    /** So many of a kind are enough to see what is wrong. */
    private static final int MOST_FAILURES = 100;
    private static final int FAULT_LENGTH = 200;
    /** A case takes milliseconds, the dearest a second or two. */
    private static final long MOST_CPU_S = 20;
    /** What damaged input may make a run allocate; what any run holds at a time is bounded by the process. */
    private static final long MOST_ALLOCATED_BYTES = 1L << 30;

    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    private final Path folder;
    private final CommandLine quick = App.commandLine(Run.session());
    private final CommandLine real = App.commandLine(Session.real(
            Clock.fixed(Instant.parse("2027-01-15T10:00:00Z"), ZoneOffset.UTC), Map.of()));
    private final Map<String, Kind> kinds = new LinkedHashMap<>();
    private final Map<String, Integer> faults = new LinkedHashMap<>();
    private int failed;

    private FuzzRun(Path folder) {
        this.folder = folder;
        kind("options", 0.40, quick, random -> List.of(FuzzOptions.of(quick, false, random)));
        kind("dear-options", 0.01, quick, random -> List.of(FuzzOptions.of(quick, true, random)));
        for (FuzzFiles.Kind file : FuzzFiles.Kind.values()) {
            double share = file == FuzzFiles.Kind.PLANETS ? 0.01 : file == FuzzFiles.Kind.FINALS ? 0.02
                    : 0.04;
            kind("file-" + file, share, quick, random -> List.of(FuzzFiles.of(file, random)));
        }
        for (FuzzEdges.Kind edge : FuzzEdges.Kind.values()) {
            kind("edge-" + edge, edge == FuzzEdges.Kind.PROOF ? 0.003 : edge == FuzzEdges.Kind.TRAIL ? 0.006
                    : edge == FuzzEdges.Kind.EXPOSE ? 0.04 : 0.02, real,
                    random -> List.of(FuzzEdges.of(edge, random)));
        }
        kind("trip-looked-at", 0.02, real, random -> List.of(FuzzTrips.of(false, random)));
        kind("trip-planned", 0.004, real, random -> List.of(FuzzTrips.of(true, random)));
        for (FuzzPairs.Kind pair : FuzzPairs.Kind.values()) {
            kind("pair-" + pair, 0.002, real, random -> FuzzPairs.of(pair, random));
        }
    }

    /**
     * Runs what {@code gloam.fuzz}, {@code gloam.fuzz.kind} and {@code gloam.fuzz.seed} ask for in a folder.
     */
    public static void main(String[] args) {
        System.exit(new FuzzRun(Path.of(args[0])).all() == 0 ? 0 : 1);
    }

    private void kind(String name, double share, CommandLine gloam, Function<RandomGenerator,
            List<FuzzCase>> draw) {
        kinds.put(name, new Kind(gloam, Math.max(1, (int) (Integer.getInteger("gloam.fuzz") * share)),
                draw));
    }

    private int all() {
        String wanted = System.getProperty("gloam.fuzz.kind", "");
        int count = 0;
        Map<Integer, Integer> byExit = new TreeMap<>();
        for (Map.Entry<String, Kind> kind : kinds.entrySet()) {
            if (kind.getKey().startsWith(wanted)) {
                long start = System.nanoTime();
                Map<Integer, Integer> exits = run(kind.getKey(), kind.getValue());
                int cases = exits.values().stream().mapToInt(Integer::intValue).sum();
                count += cases;
                exits.forEach((exit, times) -> byExit.merge(exit, times, Integer::sum));
                System.out.printf("fuzz %-20s %6d cases, by exit code %s, %.1f s%n", kind.getKey(), cases,
                        exits,
                        (System.nanoTime() - start) / 1e9);
            }
        }
        faults.forEach((fault, times) -> System.out.println("fuzz found " + times + " times: " + fault));
        System.out.printf("fuzz %d cases, by exit code %s, %d failed%n", count, byExit, failed);
        return failed;
    }

    private Map<Integer, Integer> run(String name, Kind kind) {
        Map<Integer, Integer> exits = new TreeMap<>();
        int before = failed;
        seeds(kind.count).takeWhile(seed -> failed < before + MOST_FAILURES).forEach(seed -> {
            List<FuzzCase> drawn = kind.draw.apply(new SplittableRandom(seed));
            List<Run> answers = new ArrayList<>();
            for (FuzzCase one : drawn) {
                try {
                    answers.add(run(kind.gloam, one, exits));
                } catch (Throwable wrong) {
                    fail(name, seed, one.toString(), wrong.toString());
                }
            }
            if (answers.size() > 1) {
                FuzzPairs.difference(drawn, answers).ifPresent(difference ->
                        fail(name, seed, drawn.get(0) + "\n  and " + drawn.get(1), "do not agree: "
                        + difference));
            }
        });
        return exits;
    }

    /** Tells the first case of each fault. */
    private void fail(String kind, long seed, String drawn, String wrong) {
        failed++;
        if (faults.merge(kind + ": " + fault(wrong), 1, Integer::sum) == 1) {
            System.out.println("FAILED: -Dgloam.fuzz.kind=" + kind + " -Dgloam.fuzz.seed=" + seed + "\n  "
                    + drawn + "\n    " + wrong);
        }
    }

    /**
     * What stands for all failures alike: what is said without its numbers, or of a trace the error and the
     * first two places.
     */
    private static String fault(String wrong) {
        String said = wrong.contains("\tat ") ? wrong.lines().filter(line ->
                line.contains("standard error: "))
                .findFirst().orElse("") + wrong.lines().filter(line -> line.contains("\tat gloam.")).limit(2)
                .map(String::strip).collect(Collectors.joining(" ", " ", ""))
                : wrong.lines().limit(2).collect(Collectors.joining(" "));
        String bare = said.replaceAll("-?\\d+([.,:]\\d+)*", "0").replaceAll("\\s+", " ");
        return bare.substring(0, Math.min(FAULT_LENGTH, bare.length()));
    }

    private static LongStream seeds(int count) {
        return Optional.ofNullable(Long.getLong("gloam.fuzz.seed")).map(LongStream::of)
                .orElse(LongStream.range(FIRST_SEED, FIRST_SEED + count));
    }

    /**
     * One case in a folder of its own, its exit code counted; its answer names the folder as the case does.
     */
    private Run run(CommandLine gloam, FuzzCase drawn, Map<Integer, Integer> exits) throws IOException {
        Path place = Files.createTempDirectory(folder, "case");
        drawn.write(place);
        Files.createDirectory(place.resolve("folder.txt"));
        long allocatedBefore = THREADS.getCurrentThreadAllocatedBytes();
        long cpuBefore = THREADS.getCurrentThreadCpuTime();
        Run run = Run.on(gloam, drawn.args(place));
        long allocatedBytes = THREADS.getCurrentThreadAllocatedBytes() - allocatedBefore;
        long cpuS = (THREADS.getCurrentThreadCpuTime() - cpuBefore) / 1_000_000_000;
        exits.merge(run.exit(), 1, Integer::sum);
        new FuzzVerdict(run, place, drawn).check();
        if (drawn.odd() && allocatedBytes > MOST_ALLOCATED_BYTES || cpuS > MOST_CPU_S) {
            throw new AssertionError("took " + cpuS + " s and " + allocatedBytes / (1 << 20) + " MiB");
        }
        if (run.exit() == 0 && drawn.startsWith("journal", "add") && drawn.after("--journal").isPresent()) {
            Run listed = Run.on(gloam, "journal", "list", "--journal",
                    drawn.after("--journal").get().replace(FuzzCase.FOLDER, place + "/"));
            if (listed.exit() != 0) {
                throw new AssertionError("the journal cannot be read any more: " + listed.err());
            }
        }
        try (Stream<Path> files = Files.walk(place)) {
            files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
        }
        return new Run(run.exit(), run.out().replace(place.toString(), "@"),
                run.err().replace(place.toString(), "@"));
    }

    private record Kind(CommandLine gloam, int count, Function<RandomGenerator, List<FuzzCase>> draw) {
    }
}
