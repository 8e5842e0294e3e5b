package gloam.units;

import java.util.List;

/**
 * Something the user gave that cannot be used and that the user can mend.
 *
 * <p>Each problem is one line: what, value, unit, the allowed range, where it came from, what to do.
 */
public final class BadInput extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<String> problems;

    /** One problem in one line. */
    public BadInput(String problem) {
        this(List.of(problem));
    }

    /** Several problems, a line each, in the order in which they should be read; at least one. */
    public BadInput(List<String> problems) {
        super(String.join("\n", problems));
        this.problems = List.copyOf(problems);
    }

    /** The problems, a line each. */
    public List<String> problems() {
        return problems;
    }

    /** The same problems, each followed by where they came from in brackets. */
    public BadInput from(String where) {
        return new BadInput(problems.stream().map(problem -> problem + " (" + where + ")").toList());
    }
}
