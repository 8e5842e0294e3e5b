package gloam.store;

/**
 * What is wrong at one place of a file.
 *
 * @param where the place
 * @param text  what is wrong there and what to do
 */
record Problem(Where where, String text) {

    /** The problem in one line, the place first. */
    @Override
    public String toString() {
        return where + ": " + text;
    }
}
