package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** Times that no shutter makes or nobody waits for. */
class LongAndShortTimesTest {

    private static final String BRIGHT =
            "--preview-f-number 128 --preview-iso 0.1 --preview-exposure 0.001s ";
    private static final String DIM = "--preview-f-number 0.7 --preview-iso 1000000 --preview-exposure 24h ";
    private static final String FILM = "--film instant-mono-640 --f-number 8 ";
    private static final double YEAR_S = 365.25 * 86_400;

    @Test
    void briefTimesAreTold() throws IOException {
        assertTrue(Run.printed("expose " + BRIGHT + FILM)
                .matches("(?s).*\\n +8  under 1 ms  under 1 ms  under 1 ms .*"));
        JsonNode row = Run.json("expose " + BRIGHT + FILM).at("/exposures/0");
        // t2 = t1 (N2/N1)² (S1/S2): 0.001 s (8/128)² 0.1/640
        assertEquals(0.001 / 256 * 0.1 / 640, row.get("correctedS").asDouble(), 1e-13); // five digits
        assertFalse(row.get("neverFinishes").asBoolean());
    }

    @Test
    void aTimeUnderChangingLightIsNeverNothing() throws IOException {
        String dusk = "--place 41,-2,1000 --zone UTC --from 2027-02-08T17:40 --iso 100000 --f-number 0.7 "
                + "--tone -12 ";
        assertTrue(Run.json("expose " + dusk).at("/exposures/0/correctedS").asDouble() > 0);
        assertTrue(Run.printed("expose " + dusk).contains("under 1 ms"));
        assertFalse(Run.printed("expose " + dusk).contains("earlier openings"));
    }

    @Test
    void whatTakesOverAYearNeverFinishes() throws IOException {
        String text = Run.printed("expose " + DIM + FILM);
        assertTrue(text.matches("(?s).*\\n +8  more than a year  more than a year  more than a year .*"),
                text);
        JsonNode row = Run.json("expose " + DIM + FILM).at("/exposures/0");
        for (String field : List.of("meteredS", "correctedS", "correctedLowS", "correctedHighS")) {
            assertTrue(row.has(field) && row.get(field).isNull(), field);
        }
        assertTrue(row.get("neverFinishes").asBoolean());
        // 24 h (8/0.7)² (1e6/640) metered, the marking 0.7 being 2^-0.5; to the power 1.2; against a year
        double wantedS = Math.pow(86_400 * 128 * 1e6 / 640, 1.2);
        assertEquals(Math.log(YEAR_S / wantedS) / Math.log(2), row.get("skyToneStops").asDouble(), 2e-3);
    }

    /** At one speed 24 h at f/2 become 36 days at f/12, without reciprocity failure. */
    @ParameterizedTest
    @CsvSource({"3, false", "4, true"})
    void aYearIsTheBound(int tone, boolean never) throws IOException {
        // 36 d 2^3 = 0.79 years, 2^4 = 1.58 years
        JsonNode row = Run.json("expose --preview-f-number 2 --preview-iso 640 --preview-exposure 24h --iso "
                + "640 " + "--f-number 12 --tone " + tone).at("/exposures/0");
        assertEquals(never, row.get("correctedS").isNull());
        assertEquals(never, row.get("neverFinishes").asBoolean());
        assertEquals(never ? 4 - Math.log(36 * 86_400 * 16 / YEAR_S) / Math.log(2) : 3,
                row.get("skyToneStops").asDouble(), 1e-3); // rounded to a thousandth
    }

    @ParameterizedTest
    @CsvSource({"0.4s, 0.4 s", "1ms, 0.001 s", "9.5s, 9.5 s", "59.7s, 1 min", "90s, 1 min 30 s", "2h, 2 h"})
    void theTimeAskedForIsTold(String lasts, String told) {
        String text = Run.printed("expose --sky-mag-arcsec2 21 " + FILM + "--lasts "
                + lasts.replace("1ms", "0.001s"));
        assertTrue(text.contains("the tone of the sky after " + told + "\n"), text);
        assertTrue(text.matches("(?s).*\\n +8  −\\d+\\.\\d ± .*"), text);
    }

    @ParameterizedTest
    @ValueSource(strings = {BRIGHT, DIM})
    void nothingInfiniteLeaves(String sky) {
        for (String ask : List.of("", "--sheets 3 ", "--lasts 240h ", "--lasts 0.001s ")) {
            for (String film : List.of("instant-mono-640", "instant-colour-125", "negative-classic-100")) {
                for (String format : List.of("text", "json")) {
                    String out = Run.printed("expose " + sky + ask + "--film " + film
                            + " --format " + format);
                    assertFalse(out.matches("(?s).*(Infinity|NaN|Exception).*"), out);
                    assertFalse(format.equals("text") && out.matches("(?s).*\\d{8}.*"), out);
                }
            }
        }
    }
}
