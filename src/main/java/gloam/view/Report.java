package gloam.view;

import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;

/**
 * The answer of a command: its fields, which are those of the JSON, and the document that shows it. Nothing
 * is left to compute.
 *
 * <p>The name of a number ends in its unit, and a moment has the offset of the site's time zone; in JSON
 * {@link Accuracy} rounds them by their names.
 */
public interface Report {

    /** The name of the schema that the JSON follows. */
    String SCHEMA = "gloam/2";

    /** When the report was made. */
    OffsetDateTime generatedAt();

    /** The time zone of moments that have none of their own. */
    default ZoneId zone() {
        return ZoneOffset.UTC;
    }

    /** What a reader sees of it, in any format. */
    Document document();

    /** Whether nothing was found; then {@code --fail-if-empty} ends with its own exit code. */
    default boolean empty() {
        return false;
    }
}
