package gloam.gear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gloam.units.BadInput;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FNumberTest {

    /** Half a unit of the last digit printed. */
    private static final double PRINTED = 5e-5;

    /** ISO 517:2008, exact values of the markings, four decimals. */
    @ParameterizedTest
    @CsvSource({"1.4, 1.4142", "2.8, 2.8284", "5.6, 5.6569", "11, 11.3137", "22, 22.6274", "45, 45.2548",
            "90, 90.5097",
        "1, 1", "16, 16", "64, 64", "128, 128",
        "1.2, 1.1892", "1.7, 1.6818", "2.4, 2.3784", "3.3, 3.3636", "4.8, 4.7568", "6.7, 6.7272",
                "9.5, 9.5137",
        "19, 19.0273",
        "1.1, 1.1225", "1.6, 1.5874", "1.8, 1.7818", "2.2, 2.2449", "2.5, 2.5198", "3.2, 3.1748",
                "3.5, 3.5636",
        "4.5, 4.4898", "5.0, 5.0397", "6.3, 6.3496", "7.1, 7.1272", "9, 8.9797", "10, 10.0794", "14, 14.2544",
        "18, 17.9594", "20, 20.1587"})
    void markingsStandForTheirExactValues(double marking, double exact) {
        FNumber fNumber = FNumber.marked(marking);
        assertEquals(marking, fNumber.marked());
        assertEquals(exact, fNumber.exact(), PRINTED);
        assertEquals(fNumber, FNumber.exact(fNumber.exact()));
    }

    @ParameterizedTest
    @ValueSource(doubles = {12, 11.3137, 15, 44.9, 180, 500})
    void numbersOffTheListStandForThemselves(double number) {
        assertEquals(new FNumber(number, number), FNumber.marked(number));
        assertEquals(new FNumber(number, number), FNumber.exact(number));
    }

    @ParameterizedTest
    @CsvSource({"12, 12", "f/12, 12", "f 12, 12", "1:12, 12", "F12, 12", "f/11, 11.313708498984761",
        "45, 45.254833995939045"})
    void isReadAsItIsEngraved(String text, double exact) {
        assertEquals(exact, FNumber.of(text).exact(), 1e-12); // rounding of doubles
    }

    @ParameterizedTest
    @CsvSource({"11, f/11", "5.6, f/5.6", "128, f/128", "41.26, f/41.26", "180, f/180"})
    void isWrittenAsItIsEngraved(double marking, String text) {
        assertEquals(text, FNumber.marked(marking).toString());
        assertEquals(text, "f/" + FNumber.marked(marking).number());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.6", "f/513", "eleven", "11 mm", ""})
    void otherNumbersAndWordsAreRefused(String text) {
        assertThrows(BadInput.class, () -> FNumber.of(text));
    }

    /** Light goes with 1/N²: 2 from f/8 to f/11, 2^(1/3) from f/9 to f/10, (16/12)² from 12 to 16. */
    @ParameterizedTest
    @CsvSource({"8, 11, 1", "11, 8, -1", "1, 128, 14", "9, 10, 0.333333333", "9.5, 11, 0.5",
            "12, 16, 0.830074999"})
    void stopsAreThoseOfTheLightLetThrough(double wide, double narrow, double stops) {
        assertEquals(stops, FNumber.marked(wide).stopsOver(FNumber.marked(narrow)), 1e-9); // as given
        assertEquals(Math.pow(2, stops), FNumber.marked(narrow).squared() / FNumber.marked(wide).squared(),
                1e-9);
    }

    @Test
    void wholeStopsRunFromTheWidestToTheNarrowest() {
        List<FNumber> stops = FNumber.wholeStops();
        assertEquals(List.of(0.7, 1.0, 1.4, 2.0, 2.8, 4.0, 5.6, 8.0, 11.0, 16.0, 22.0, 32.0, 45.0, 64.0,
                90.0, 128.0,
                181.0, 256.0, 362.0, 512.0), stops.stream().map(FNumber::marked).toList());
        assertEquals(stops, stops.stream().sorted().toList());
        for (int i = 1; i < stops.size(); i++) {
            assertEquals(1, stops.get(i - 1).stopsOver(stops.get(i)), 0.002); // f/181 is 2^7.5 to 0.001
        }
    }

    @Test
    void inOrderTheWidestComesFirst() {
        assertEquals(FNumber.series(5.6, 8, 11, 45),
                FNumber.series(45, 8, 11, 5.6).stream().sorted().toList());
    }
}
