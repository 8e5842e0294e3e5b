package gloam.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gloam.units.BadInput;
import java.time.Instant;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Messages invented after the rules of FM 51 TAF (WMO-No. 306, Volume I.1); oktas: FEW 1–2, SCT 3–4, BKN 5–7, OVC 8. */
class TafTest {

    private static final LocalDate NEAR = LocalDate.of(2027, 2, 8);

    private static double cloud(String message, String at) {
        Instant instant = Instant.parse(at);
        return Taf.read(message, NEAR).rows().stream().filter(row -> row.at().equals(instant)).findFirst().orElseThrow()
                .cloudFraction();
    }

    @Test
    void theThickestLayerCounts() {
        assertEquals(6.0 / 8, cloud("TAF XXXX 081700Z 0818/0918 24008KT 9999 FEW020 BKN080", "2027-02-08T20:00:00Z"));
    }

    @Test
    void fromChangesAtOnce() {
        String message = "TAF XXXX 081700Z 0818/0918 24008KT 9999 OVC020 FM082130 SKC";
        assertEquals(1, cloud(message, "2027-02-08T21:20:00Z"));
        assertEquals(0, cloud(message, "2027-02-08T21:30:00Z"));
    }

    @Test
    void becomingChangesOverItsPeriod() {
        String message = "TAF XXXX 081700Z 0818/0918 24008KT 9999 SKC BECMG 0822/0824 OVC030=";
        assertEquals(0, cloud(message, "2027-02-08T22:00:00Z"));
        assertEquals(0.5, cloud(message, "2027-02-08T23:00:00Z"), 1e-12);
        assertEquals(1, cloud(message, "2027-02-09T00:00:00Z"));
        assertEquals(1, cloud(message, "2027-02-09T06:00:00Z"));
    }

    /** Less than half of the time in all, says the code of TEMPO. */
    @Test
    void temporaryCloudCountsHalfAndOnlyInItsPeriod() {
        String message = "TAF XXXX 081700Z 0818/0918 24008KT 9999 SKC TEMPO 0820/0822 OVC010";
        assertEquals(0.5, cloud(message, "2027-02-08T21:00:00Z"));
        assertEquals(0, cloud(message, "2027-02-08T22:00:00Z"));
        assertEquals(0.15, cloud("TAF XXXX 081700Z 0818/0918 SKC PROB30 TEMPO 0820/0822 OVC010", "2027-02-08T21:00:00Z"),
                1e-12);
        assertEquals(0.4, cloud("TAF XXXX 081700Z 0818/0918 SKC PROB40 0820/0822 OVC010", "2027-02-08T21:00:00Z"), 1e-12);
    }

    /** The days of a message belong to the months around its date. */
    @Test
    void daysRunOverTheEndOfAMonth() {
        Forecast over = Taf.read("TAF XXXX 281700Z 2818/0124 SKC", LocalDate.of(2027, 2, 28));
        assertEquals(Instant.parse("2027-02-28T18:00:00Z"), over.covers().start());
        assertEquals(Instant.parse("2027-03-02T00:00:00Z"), over.covers().endExclusive());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "TAF XXXX", "nothing of the kind", "TAF XXXX 081700Z 0918/0818 SKC", "TAF 0018/9924 SKC"})
    void refusesWhatIsNoForecast(String message) {
        assertThrows(BadInput.class, () -> Taf.read(message, NEAR));
    }
}
