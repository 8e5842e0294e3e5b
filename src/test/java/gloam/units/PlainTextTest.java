package gloam.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class PlainTextTest {

    @Test
    void ordinaryWritingStays() {
        for (String text : new String[] {"", "f/11 − 3.5″", "日本の夜", "עברית \u200f(2)", "नमस्ते\u200d", "👩\u200d🚀", "a\u0308"}) {
            assertEquals(text, PlainText.of(text));
        }
    }

    /** Escape sequences (ECMA-48) begin with U+001B or with U+009B; directions are those of UAX 9, 2.1 to 2.5. */
    @Test
    void whatSteersIsReplaced() {
        assertEquals("a\uFFFD[31mb", PlainText.of("a\u001B[31mb"));
        assertEquals("\uFFFD2J", PlainText.of("\u009B2J"));
        assertEquals("\uFFFDabc\uFFFD", PlainText.of("\u202Eabc\u202C"));
        assertEquals("\uFFFDx\uFFFD", PlainText.of("\u2067x\u2069"));
        assertEquals("two\uFFFDlines\uFFFDor three", PlainText.of("two\nlines\u2028or three"));
        assertEquals("half \uFFFD", PlainText.of("half \uD83D"));
    }

    @Test
    void everyCharacterStaysThatIsHarmless() {
        for (int point = 0; point <= 0xFFFF; point++) {
            String text = Character.toString(point);
            assertEquals(PlainText.harmless(point) ? text : "\uFFFD", PlainText.of(text));
        }
    }
}
