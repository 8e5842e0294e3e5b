package gloam.view;

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

    /**
     * Emoji sequences as Unicode Technical Standard 51 names them: joined, with a skin tone, a flag, a sign
     * as a picture.
     */
    @ParameterizedTest
    @CsvSource({"\uD83D\uDC69\u200D\uD83D\uDE80, 2", "\uD83D\uDC68\u200D\uD83D\uDC69\u200D\uD83D\uDC67, 2",
        "\uD83D\uDC4D\uD83C\uDFFD, 2", "\uD83C\uDDEA\uD83C\uDDF8, 2", "\u2744\uFE0F, 2", "\u2744, 1",
        "a\u200Db, 2"})
    void aPictureOfSeveralCharactersIsAsWideAsOne(String text, int width) {
        assertEquals(width, TextWidth.of(text));
    }

    @Test
    void textBreaksAtBlanks() {
        assertEquals(List.of("one two", "three", "incomprehensible", "x"),
                TextWidth.wrapped("one two three incomprehensible x", 8));
    }

    /**
     * Lines may be broken on either side of an ideograph (Unicode Standard Annex 14, class ID), marks stay
     * with it.
     */
    @Test
    void wordsWiderThanALineBreakBesideWideLetters() {
        assertEquals(List.of("星空星空", "星ab"), TextWidth.wrapped("星空星空星ab", 8));
        assertEquals(List.of("か\u3099か\u3099", "か\u3099か\u3099"),
                TextWidth.wrapped("か\u3099か\u3099か\u3099か\u3099", 4));
        assertEquals(2, TextWidth.ofWidestWord("星空 星"));
        assertEquals(4, TextWidth.ofWidestWord("Loma to"));
    }

    @Test
    void nothingIsOneEmptyLine() {
        assertEquals(List.of(""), TextWidth.wrapped("", 8));
    }
}
