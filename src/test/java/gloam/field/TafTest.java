package gloam.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Messages invented after the rules of FM 51 TAF (WMO-No. 306, Volume I.1); oktas: FEW 1–2, SCT 3–4, BKN 5–7,
 * OVC 8.
 */
class TafTest {

    private static final LocalDate NEAR = LocalDate.of(2027, 2, 8);

    private static double cloud(String message, String at) {
        Instant instant = Instant.parse(at);
        return forecast(message, NEAR).rows().stream().filter(row -> row.at().equals(instant)).findFirst()
                .orElseThrow()
                .cloudFraction();
    }

    @Test
    void theThickestLayerCounts() {
        assertEquals(6.0 / 8, cloud("TAF XXXX 081700Z 0818/0918 24008KT 9999 FEW020 BKN080",
                "2027-02-08T20:00:00Z"));
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
        assertEquals(0.15, cloud("TAF XXXX 081700Z 0818/0918 SKC PROB30 TEMPO 0820/0822 OVC010",
                "2027-02-08T21:00:00Z"), 1e-12);
        assertEquals(0.4, cloud("TAF XXXX 081700Z 0818/0918 SKC PROB40 0820/0822 OVC010",
                "2027-02-08T21:00:00Z"), 1e-12);
    }

    /** The days of a message belong to the months around its date. */
    @Test
    void daysRunOverTheEndOfAMonth() {
        Forecast over = forecast("TAF XXXX 281700Z 2818/0124 SKC", LocalDate.of(2027, 2, 28));
        assertEquals(Instant.parse("2027-02-28T18:00:00Z"), over.covers().start());
        assertEquals(Instant.parse("2027-03-02T00:00:00Z"), over.covers().endExclusive());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            ''                                   | [0 the TAF names no validity such as 0818/0924; paste it whole]
            TAF XXXX                             | [0 the TAF names no validity such as 0818/0924; paste it whole]
            TAF XXXX 0918/0818 SKC               | [9 the TAF's period 0918/0818 ends before it begins; take the group out or correct it, 0 the TAF names \
            no validity such as 0818/0924; paste it whole]
            TAF 0018/9924 SKC                    | [4 the TAF names day 00, which no month has; paste it anew, 0 the TAF names no validity \
            such as 0818/0924; paste it whole]
            TAF 0818/0924 FM082190 OVC010 0899/0901 | [14 minute 90 min is out of range; give 0 … 59 min, 30 hour 99 h is out of range; give 0 … 24 h]
            TAF 0818/1018 SKC                    | [4 the TAF's period 0818/1018 is longer than 30 h; correct its days and hours, 0 the TAF names no \
            validity such as 0818/0924; paste it whole]
            FM082100 0818/0924                   | [0 FM082100 stands before the TAF's validity, such as 0818/0924; paste it whole]
            """)
    void everyProblemIsToldWithItsPlace(String message, String told) {
        List<String> problems = new ArrayList<>();
        assertEquals(Optional.empty(),
                Taf.read(message, NEAR, (place, problem) -> problems.add(place + " " + problem)));
        assertEquals(told, problems.toString());
    }

    /** Groups without end would make every moment of the night as slow to tell as they are many. */
    @Test
    void groupsWithoutEndAreRefused() {
        List<String> problems = new ArrayList<>();
        Taf.read("TAF 0818/0924 TEMPO 0820/0822 ".repeat(501), NEAR,
                (place, problem) -> problems.add(problem));
        assertEquals(List.of("the TAF has more than 500 groups. Is it the right file?"), problems);
    }

    private static Forecast forecast(String message, LocalDate near) {
        return Taf.read(message, near, (place, problem) -> fail(problem)).orElseThrow();
    }
}
