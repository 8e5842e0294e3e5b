package gloam.view;

import java.io.IOException;
import java.io.OutputStream;

/** Writes a report as the bytes of a file; lays out and encodes, computes nothing. */
interface FileRenderer {

    /** Whether it has a form for that report. */
    default boolean suits(Report report) {
        return true;
    }

    /** Writes the whole report. */
    void write(Report report, OutputStream out) throws IOException;
}
