package gloam.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class PlainTextTest {

    @Test
    void ordinaryWritingStays() {
        for (String text : new String[] {"", "f/11 − 3.5″", "日本の夜", "עברית \u200f(2)", "नमस्ते\u200d",
                "👩\u200d🚀", "a\u0308"}) {
            assertEquals(text, PlainText.of(text));
        }
    }

    /**
     * Escape sequences (ECMA-48) begin with U+001B or with U+009B; directions are those of UAX 9, 2.1 to 2.5.
     */
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

    /**
     * Unicode Standard Annex 9: what stands between a first strong isolate and its end turns nothing outside.
     */
    @Test
    void writingFromRightToLeftIsSetApart() {
        for (String plain : new String[] {"", "Loma 7", "\u0416\u03b1 \u661f\u7a7a 12", "f/11 \u00b1 0.3"}) {
            assertEquals(plain, PlainText.isolated(plain));
        }
        assertEquals("20:10  \u2068\u05d7\u05d5\u05e3 3 \u05d4\u2069 - 4",
                PlainText.isolated("20:10  \u05d7\u05d5\u05e3 3 \u05d4 - 4"));
        assertEquals("\u2068\u05d7\u2069 a \u2068\u0642\u0645\u0631 \u0663\u2069",
                PlainText.isolated("\u05d7 a \u0642\u0645\u0631 \u0663"));
        assertEquals("\u2068\u05d7\u05b8\u2069.", PlainText.isolated("\u05d7\u05b8."));
    }
}
