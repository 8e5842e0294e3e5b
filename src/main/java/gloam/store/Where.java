package gloam.store;

/**
 * A place in a file: the file as the user knows it, line and column counted from 1, and the path of keys to
 * it.
 *
 * @param file   the file's name as it was given
 * @param line   the line
 * @param column the column
 * @param path   such as {@code wishes[2].trail-mm.least}; empty for the whole file
 */
record Where(String file, int line, int column, String path) {

    /** The place in the form {@code trip.yaml:23:18 wishes[2].trail-mm.least}. */
    @Override
    public String toString() {
        String spot = file + ":" + line + ":" + column;
        return path.isEmpty() ? spot : spot + " " + path;
    }
}
