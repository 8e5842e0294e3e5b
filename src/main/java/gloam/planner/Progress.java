package gloam.planner;

import java.util.concurrent.atomic.AtomicInteger;

/** Is told how far a long computation has come, by whichever thread has come so far. */
@FunctionalInterface
public interface Progress {

    /** Told to nobody. */
    Progress NONE = (done, all) -> { };

    /** So many parts out of all are done. */
    void reached(int done, int all);

    /** What to run after each of so many parts. */
    default Runnable each(int all) {
        AtomicInteger done = new AtomicInteger();
        return () -> reached(done.incrementAndGet(), all);
    }
}
