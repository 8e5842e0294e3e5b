package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The published schema is that of the records; {@code -Dgolden.update=true} writes it anew. */
class PublishedSchemaTest {

    @Test
    void isThatOfTheReports() throws IOException {
        Path published = Path.of("src/main/resources/gloam/view/schema.json");
        if (Boolean.getBoolean("golden.update")) {
            Files.writeString(published, ReportSchema.text());
        }
        assertEquals(ReportSchema.text(), Files.readString(published));
    }
}
