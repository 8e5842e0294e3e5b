package gloam.view;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;

/** Writes a report as text in one format; lays out and escapes, computes nothing. */
interface Renderer extends FileRenderer {

    /** Writes the whole report, its last line ended. */
    void render(Report report, Appendable out) throws IOException;

    @Override
    default void write(Report report, OutputStream out) throws IOException {
        Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        render(report, text);
        text.flush();
    }
}
