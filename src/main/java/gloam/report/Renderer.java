package gloam.report;

import java.io.IOException;

/** Writes a report in one format; lays out and escapes, computes nothing. */
@FunctionalInterface
interface Renderer {

    /** Writes the whole report, its last line ended. */
    void render(Report report, Appendable out) throws IOException;
}
