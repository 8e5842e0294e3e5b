package gloam.gear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.support.Samples;
import gloam.units.BadInput;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class CoordinatesTest {

    private static final double ROUNDING_DEG = 1e-12; // of doubles, by way of radians

    /** Examples of ISO 6709:2008, annex H, and of its annex D for people, both from memory. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        +00-025/                              | 0               | -25
        +46+002/                              | 46              | 2
        +48.52+002.20/                        | 48.52           | 2.20
        +48.8577+002.295/                     | 48.8577         | 2.295
        +90+000/                              | 90              | 0
        +00-160/                              | 0               | -160
        +38-097/                              | 38              | -97
        +40.20361-075.00417/                  | 40.20361        | -75.00417
        +4012.22-07500.25/                    | 40.203666666667 | -75.004166666667
        +401213.1-0750015.1/                  | 40.203638888889 | -75.004194444444
        50°03′46.461″S 125°48′26.533″E        | -50.0629058333  | 125.8073702778
        """)
    void formsOfIso6709(String text, double latitudeDeg, double longitudeDeg) {
        Coordinates place = Coordinates.of(text);
        assertEquals(latitudeDeg, place.latitude().degrees(), 1e-9); // digits of the expected values
        assertEquals(longitudeDeg, place.longitude().degrees(), 1e-9);
        assertEquals(OptionalDouble.empty(), place.heightM());
    }

    /** The same annexes, with heights, from memory. */
    @ParameterizedTest
    @CsvSource({"+27.5916+086.5640+8850CRSWGS_84/, 8850", "-90+000+2800CRSWGS_84/, 2800",
        "50°40′46″N 95°48′26″W 123.45m, 123.45", "+40.4100-001.2300+1320/, 1320", "+31.5+035.5-430/, -430"})
    void heights(String text, double heightM) {
        assertEquals(heightM, Coordinates.of(text).heightM().getAsDouble());
    }

    @ParameterizedTest
    @ValueSource(strings = {"40.41, -1.23", "40.41,-1.23", "40.41;-1.23", "40.41N 1.23W", "N40.41 W1.23",
            "40°24′36″N 1°13′48″W",
        "40°24'36\"N, 1°13'48\"W", "40:24:36,-1:13:48", "40 24 36 N, 1 13 48 W", "40d24m36sN 1d13m48sW",
        "40 24.6 N, 1 13.8 W",
        "N 40 24.6 W 1 13.8", "+40.41-001.23/", "+402436-0011348/", "+40,41-001,23/", "40.41°, −1.23°"})
    void onePlaceInManyForms(String text) {
        Coordinates place = Coordinates.of(text);
        assertEquals(40.41, place.latitude().degrees(), ROUNDING_DEG);
        assertEquals(-1.23, place.longitude().degrees(), ROUNDING_DEG);
    }

    @ParameterizedTest
    @CsvSource({"'40.41,-1.23,1320', 1320", "'40.41,-1.23,1320m', 1320", "'40.41, -1.23, 1.32 km', 1320",
        "40.41N 1.23W 1320 m, 1320", "'40.41, -1.23, 1000ft', 304.8"})
    void heightsWithTheirUnit(String text, double heightM) {
        assertEquals(heightM, Coordinates.of(text).heightM().getAsDouble());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "40.41", "40.41 -1.23", "40,41,-1,23", "1.23W 40.41N", "91,0", "0,181",
            "+91+000/", "+00+181/",
        "-40.41N 1.23W", "N40.41S 1.23W", "40.41E, 1.23N", "+40.41-01.23/", "+4-001/", "+4060-00100/",
        "+400060-0010000/", "+40-001+9999/", "+40-001+10CRSEPSG_3857/", "40°60′N 1°W", "40.5°30′N 1°W",
        "40,-1,high", "40.41, -1.23, 1320, 5", "NaN,0", "1e400,0"})
    void whatIsNoPlaceIsRefused(String text) {
        assertThrows(BadInput.class, () -> Coordinates.of(text), text);
    }

    @Test
    void refusalsSayWhatToDo() {
        assertEquals("latitude \"40.41W\" is not understood. Give a sign or one of the letters N and S, "
                + "such as 40.41, 40°24′36″N or 40:24:36", refusal("40.41W"));
        assertEquals("latitude \"-40.41N\" is not understood. Give a sign or one of the letters N and S, "
                + "such as 40.41, 40°24′36″N or 40:24:36", refusal("-40.41N"));
        assertEquals("latitude 95 deg is out of range; give -90 … 90 deg", refusal("95"));
        assertTrue(refusal("north")
                .startsWith("latitude \"north\" is not understood. Write degrees, such as 40.41"));
    }

    @Test
    void southAndWestAreNegativeAlsoBelowADegree() {
        assertEquals(-0.5, Coordinates.latitude("0°30′S").degrees(), ROUNDING_DEG);
        assertEquals(-0.5, Coordinates.longitude("-0:30").degrees(), ROUNDING_DEG);
    }

    static Stream<Named<Double>> latitudes() {
        return Samples.of(300, random -> random.nextDouble(-89.99, 89.99));
    }

    @ParameterizedTest
    @MethodSource("latitudes")
    void everyPlaceSurvivesBeingWrittenInDegreesMinutesAndSeconds(double degrees) {
        long milliarcsec = Math.round(Math.abs(degrees) * 3_600_000);
        String text = String.format(Locale.ROOT, "%d°%02d′%02d.%03d″%s", milliarcsec / 3_600_000,
                milliarcsec / 60_000 % 60, milliarcsec / 1000 % 60, milliarcsec % 1000, degrees < 0 ? "S"
                : "N");
        assertEquals(degrees, Coordinates.latitude(text).degrees(), 1.5e-7);
                // half a thousandth of a second of arc
    }

    private static String refusal(String latitude) {
        return assertThrows(BadInput.class, () -> Coordinates.latitude(latitude)).getMessage();
    }
}
