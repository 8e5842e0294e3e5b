package gloam.view;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** The JSON Schema of all reports, as published. */
public final class Schema {

    private static final String RESOURCE = "/gloam/view/schema.json";

    private Schema() {
    }

    /** The schema, draft 2020-12, as text. */
    public static String text() {
        try (InputStream in = Objects.requireNonNull(Schema.class.getResourceAsStream(RESOURCE), RESOURCE)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
