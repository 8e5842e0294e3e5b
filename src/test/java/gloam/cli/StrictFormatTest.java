package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is read strictly refuses figures that nobody cut and words that are none, in pages and tables for
 * programs too.
 */
class StrictFormatTest {

    @ParameterizedTest
    @ValueSource(strings = {"0.30000000000000004", "1.0000000000000002", "12.3456789", "NaN", "null",
            "Infinity"})
    void whatNobodyCutIsRefused(String figure) {
        assertThrows(Throwable.class, () -> csv(figure));
        assertThrows(Throwable.class, () -> page(figure));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.00000002474", "0.0002474", "12.345678", "2027-02-08T20:45:00.0+01:00"})
    void whatIsCutIsNot(String figure) {
        assertDoesNotThrow(() -> csv(figure));
        assertDoesNotThrow(() -> page(figure));
    }

    private static void csv(String figure) {
        StrictFormat.check("csv", ("filmLx,note\r\n" + figure + ",plain\r\n")
                .getBytes(StandardCharsets.UTF_8));
    }

    private static void page(String figure) {
        StrictFormat.check("html",
                ("<!DOCTYPE html><html lang=\"en\"><head><title>Sheets</title></head><body>"
                + "<main class=\"data\"><p>" + figure + "</p></main></body></html>")
                .getBytes(StandardCharsets.UTF_8));
    }
}
