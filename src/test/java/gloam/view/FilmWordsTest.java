package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gloam.journal.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FilmWordsTest {

    @ParameterizedTest
    @CsvSource({"0.586, 0.59 ± 0.38 stops slower", "-0.2, 0.20 ± 0.38 stops faster",
            "0, 0.00 ± 0.38 stops slower",
        "-0.001, 0.00 ± 0.38 stops slower"})
    void whatHasAMinusIsFaster(double slowerStops, String words) {
        assertEquals(words, FilmWords.slower(new Estimate(slowerStops, 0.38)));
    }

    @Test
    void sheetsAreCounted() {
        assertEquals("a film", FilmWords.name("a film", 0));
        assertEquals("a film (fitted to 1 sheet)", FilmWords.name("a film", 1));
        assertEquals("a film (fitted to 2 sheets)", FilmWords.name("a film", 2));
    }
}
