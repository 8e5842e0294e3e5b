package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.OffsetDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AccuracyTest {

    @ParameterizedTest
    @CsvSource({
        "altitudeDeg, 123.456789, 123.45679",
        "sunAltitudeDeg, -0.000001, 0",
        "azimuthDeg, 359.999999, 0",
        "rightAscensionDeg, 359.99999, 359.99999",
        "turnDeg, 359.999999, 360",
        "trailDirectionDeg, 359.9996, 0",
        "skyToneStops, -0.0001, 0",
        "correctedS, 9414.237, 9414.2",
        "meteredS, 0.0333333333, 0.033333",
        "lastsS, 98765.4321, 98765.432",
        "skyCdM2, 2.47362e-4, 0.0002474",
        "airglowCdM2, 2.47362e-6, 0.000002474",
        "filmLx, 2.47362e-8, 2.474E-8",
        "distanceKm, 399419.92749, 399419.927",
        "temperatureK, 11849, 11800",
        "illuminatedFraction, 0.1234567, 0.12346",
        "keptFraction, 0.1234567, 0.1235"
    })
    void theEndOfANameSaysHowFarItsNumberIsCut(String name, double number, String cut) {
        assertEquals(cut, Accuracy.of(name).text(number));
    }

    @ParameterizedTest
    @CsvSource({
        "Event, at, 2027-02-09T05:29:59.949+05:30, 2027-02-09T05:29:59.9+05:30",
        "Event, at, 2027-02-09T23:59:59.950+05:30, 2027-02-10T00:00:00+05:30",
        "Instant, at, 2027-02-09T05:29:59.9494+05:30, 2027-02-09T05:29:59.949+05:30",
        "Span, from, 2027-02-09T05:29:59.949+05:30, 2027-02-09T05:29:59.9+05:30",
        "Frame, openAt, 2027-02-09T05:29:59.949+05:30, 2027-02-09T05:29:59.949+05:30"
    })
    void whatARecordAndItsMomentAreCalledSaysHowFarThatIsCut(String record, String name, OffsetDateTime at,
                                                            OffsetDateTime cut) {
        assertEquals(cut, Accuracy.of(record, name).of(at));
    }

    @Test
    void aMomentOfNoKnownKindIsABug() {
        assertEquals("the moment when of Event is of no known kind",
                assertThrows(IllegalStateException.class, () -> Accuracy.of("Event", "when")).getMessage());
    }

    @Test
    void theLongestEndingCounts() {
        assertEquals("1.23457", Accuracy.of("altitudeDeg").text(1.23456789));
        assertEquals("1.2345679", Accuracy.of("latitudeDeg").text(1.23456789));
    }

    @Test
    void whatIsNoNumberIsABug() {
        Accuracy.Cut cut = Accuracy.of("altitudeDeg");
        assertThrows(IllegalStateException.class, () -> cut.text(Double.NaN));
        assertThrows(IllegalStateException.class, () -> cut.text(Double.NEGATIVE_INFINITY));
    }

    @Test
    void aNumberWithoutAUnitIsABug() {
        assertEquals("the number angle does not end in a known unit",
                assertThrows(IllegalStateException.class, () -> Accuracy.of("angle")).getMessage());
    }
}
