package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** Every proof of a contact sheet is that of the sheet alone. */
class ContactSheetTest {

    private static final String SHEET = " --place 41.05,-2.15,1080 --zone Europe/Madrid --focal-length 120"
            + " --frame 80x80 --azimuth 150 --altitude 50 --from 2027-02-08T21:30 --film instant-mono-640";

    @Test
    void tonesAndStarsAreThoseOfTheSheetsAlone() {
        JsonNode contact = Run.json("proof --contact --f-number 8,11 --lasts 40m" + SHEET);
        assertEquals(6, contact.get("settings").size());
        for (JsonNode one : contact.get("settings")) {
            JsonNode trail = Run.json("trail --f-number " + one.get("fNumber") + " --lasts "
                    + one.get("lastsS") + "s" + SHEET);
            assertEquals(trail.at("/sheet/skyToneStops").doubleValue(), one.get("toneStops").doubleValue(),
                    0.002);
            assertEquals(trail.at("/records/stars"), one.get("recordedStars"));
        }
    }

    /** The last row is off by the ± that the exposure is said to have. */
    @Test
    void theLastRowIsOffByTheSpread() {
        JsonNode contact = Run.json("proof --contact --f-number 8,11 --lasts 40m" + SHEET);
        JsonNode expose = Run.json("expose --f-number 8 --lasts 40m" + SHEET).at("/exposures/0");
        double spreadStops = expose.get("skyToneSpreadStops").doubleValue();
        assertEquals(spreadStops, contact.get("spreadStops").doubleValue(), 0.01);
        double[] tones = {0, 0, 0};
        for (int i = 0; i < 3; i++) {
            assertEquals(i - 1, contact.at("/spread/" + i + "/deviations").intValue());
            tones[i] = contact.at("/spread/" + i + "/toneStops").doubleValue();
        }
        assertEquals(expose.get("skyToneStops").doubleValue(), tones[1], 0.02);
        // a film's law is a little bent, so a tenth of the spread
        assertEquals(-spreadStops, tones[0] - tones[1], spreadStops / 10);
        assertEquals(spreadStops, tones[2] - tones[1], spreadStops / 10);
    }

    @Test
    void itIsDrawnWithAPictureForEach() {
        Run run = Run.of(("proof --contact --f-number 8,11 --lasts 40m --format svg" + SHEET).split(" "));
        assertEquals(9, run.out().split("<image ").length - 1);
        assertTrue(run.out().contains("Contact sheet") && run.out().contains("stars")
                && run.out().contains("Europe/Madrid"), run.err());
    }

    @Test
    void tooMuchIsRefused() {
        Run many = Run.of(("proof --contact --f-number 4,5.6,8,11,16,22 --lasts 40m" + SHEET).split(" "));
        assertEquals(2, many.exit());
        assertTrue(many.err().contains("1 to 5 with --f-number"), many.err());
        Run twice = Run.of(("proof --contact --f-number 8 --lasts 40m --open 2027-02-08T23:00/10m" + SHEET)
                .split(" "));
        assertEquals(2, twice.exit());
        assertTrue(twice.err().contains("without --open"), twice.err());
    }
}
