package gloam.view;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The style sheets in the jar: how pages look, and how drawings do wherever they stand. */
enum StyleSheet {
    PAGE("page.css"), DRAWING("drawing.css");

    private final String file;

    StyleSheet(String file) {
        this.file = file;
    }

    /** Its rules. */
    String rules() {
        try (InputStream rules = StyleSheet.class.getResourceAsStream(file)) {
            return new String(rules.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException cannotHappen) {
            throw new UncheckedIOException(cannotHappen);
        }
    }
}
