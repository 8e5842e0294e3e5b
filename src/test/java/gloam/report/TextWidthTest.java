package gloam.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextWidthTest {

    /** Widths by Unicode Standard Annex 11, as every terminal of today shows them. */
    @ParameterizedTest
    @CsvSource({"Loma, 4", "f/11°, 5", "日本, 4", "한국, 4", "ａ, 2", "a\u0308, 1", "𝛼, 1", "🌙, 2"})
    void widthIsThatOnATerminal(String text, int width) {
        assertEquals(width, TextWidth.of(text));
    }

    @Test
    void textBreaksAtBlanks() {
        assertEquals(List.of("one two", "three", "incomprehensible", "x"),
                TextWidth.wrapped("one two three incomprehensible x", 8));
    }

    @Test
    void nothingIsOneEmptyLine() {
        assertEquals(List.of(""), TextWidth.wrapped("", 8));
    }
}
