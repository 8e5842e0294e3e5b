package gloam.view;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** What pages carry: how they look, how drawings do wherever they stand, and what follows the clock. */
enum PagePart {
    STYLE("page.css"), DRAWING_STYLE("drawing.css"), LIVE_SCRIPT("live.js");

    private final String file;

    PagePart(String file) {
        this.file = file;
    }

    /** What it says. */
    String text() {
        try (InputStream text = PagePart.class.getResourceAsStream(file)) {
            return new String(text.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException cannotHappen) {
            throw new UncheckedIOException(cannotHappen);
        }
    }
}
