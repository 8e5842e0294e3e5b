package gloam.store;

import java.util.Optional;

/** Stops the reading of one value; never leaves this package. */
final class Fault extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Optional<Problem> problem;

    private Fault(Optional<Problem> problem) {
        super(null, null, false, false);
        this.problem = problem;
    }

    /** A value that cannot be used, and why. */
    static Fault at(Where where, String text) {
        return new Fault(Optional.of(new Problem(where, text)));
    }

    /** A value that needs another one whose problem has been noted already. */
    static Fault alreadyNoted() {
        return new Fault(Optional.empty());
    }

    /** The problem, unless it has been noted already. */
    Optional<Problem> problem() {
        return problem;
    }
}
