package gloam.store;

import gloam.units.BadInput;
import gloam.units.Range;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.function.Supplier;

/**
 * What one reading brings to light: every problem, and every default that stood in for a value. What else it
 * asks of the file's keys is passed on to whoever lists them.
 */
class Findings {

    private static final int MOST_SHOWN = 50;

    private final List<String> filesInOrder = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private final List<String> defaultsUsed = new ArrayList<>();

    /** Notes that a file was opened; its problems are listed after those of files opened before it. */
    final void opened(String file) {
        filesInOrder.add(file);
    }

    /** A section was asked for a key: where it stands, nowhere when it is left out. */
    void asked(String path, OptionalInt line) {
    }

    /** What happens without a key: it is required, or something stands in for it. */
    void without(String path, String what) {
    }

    /** A value was read as this kind of thing. */
    void readAs(String path, String kind) {
    }

    /** A value was read as a number in a range. */
    void readAs(String path, Range range) {
    }

    /** How many files have been opened. */
    final int filesOpened() {
        return filesInOrder.size();
    }

    /** Notes a problem. */
    final void add(Problem problem) {
        problems.add(problem);
    }

    /** Notes that a value was missing and what is used instead. */
    final void usedDefault(String path, String shown) {
        defaultsUsed.add(path + ": " + shown);
    }

    /** The defaults used, in the order in which they were asked for. */
    final List<String> defaultsUsed() {
        return List.copyOf(defaultsUsed);
    }

    /**
     * What a reader makes of the file; all problems at once, in the order of the files, where there are any.
     */
    final <T> T result(Supplier<T> reader) {
        T result = null;
        try {
            result = reader.get();
        } catch (Fault fault) {
            fault.problem().ifPresent(problems::add);
        }
        if (!problems.isEmpty()) {
            throw new BadInput(lines());
        }
        return Objects.requireNonNull(result);
    }

    private List<String> lines() {
        List<String> all = problems.stream()
                .sorted(Comparator.<Problem>comparingInt(problem ->
                filesInOrder.indexOf(problem.where().file()))
                        .thenComparingInt(problem -> problem.where().line())
                        .thenComparingInt(problem -> problem.where().column()))
                .map(Problem::toString).distinct().toList();
        List<String> lines = new ArrayList<>(all.subList(0, Math.min(MOST_SHOWN, all.size())));
        if (all.size() > MOST_SHOWN) {
            lines.add("and " + (all.size() - MOST_SHOWN) + " more. Correct these first.");
        }
        return lines;
    }
}
