package gloam.units;

import java.util.List;

/**
 * Something the user gave that cannot be used and that the user can mend.
 *
 * <p>Each problem is one line: what, value, unit, the allowed range, where it came from, what to do. Whatever
 * of the user's text stands in it is made {@link PlainText}, and the middle of an endless line is left out.
 */
public final class BadInput extends RuntimeException {

    private static final long serialVersionUID = 1L;
    private static final int LONGEST = 600;
    private static final int KEPT_OF_END = 200;

    private final transient List<String> problems;

    /** One problem in one line. */
    public BadInput(String problem) {
        this(List.of(problem));
    }

    /** Several problems, a line each, in the order in which they should be read; at least one. */
    public BadInput(List<String> problems) {
        super(String.join("\n", lines(problems)));
        this.problems = lines(problems);
    }

    private static List<String> lines(List<String> problems) {
        return problems.stream().map(BadInput::line).toList();
    }

    private static String line(String problem) {
        String line = PlainText.of(problem);
        return line.length() <= LONGEST ? line
                : PlainText.of(line.substring(0, LONGEST - KEPT_OF_END) + " … "
                        + line.substring(line.length() - KEPT_OF_END));
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
