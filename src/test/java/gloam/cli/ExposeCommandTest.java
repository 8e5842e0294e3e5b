package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

class ExposeCommandTest {

    private static final String PLACE = "--lat 41.05 --lon -2.15 --height 1080 --zone Europe/Madrid ";
    private static final String PREVIEW = "--preview-f-number 2 --preview-iso 640 --preview-exposure 30s ";
    private static final String NIGHT = PLACE + "--from 2027-02-08T21:00 --altitude 45 --azimuth 180 ";
    private static final String FILM = "--film instant-mono-640 --f-number 8 ";

    @Test
    void previewIsTransferredExactly() throws IOException {
        // t2 = t1 (N2/N1)² at one speed: common practice, no source, 30 s at f/2 become 18 min at f/12; and
        // 1080^1.31 = 9414 s. JSON keeps five digits
        JsonNode row = expose(PREVIEW + "--iso 640 --reciprocity power:1.31 --f-number 12")
                .at("/exposures/0");
        assertEquals(1080, row.get("meteredS").asDouble());
        assertEquals(9414.2, row.get("correctedS").asDouble(), 0.5);
    }

    @Test
    void readingsOfOneSkyAreCompared() throws IOException {
        // one magnitude is log2 10^0.4 = 1.329 stops; the preview frame alone rules the times
        double previewMag = expose(PREVIEW + FILM).at("/situation/skyMagArcsec2").asDouble();
        JsonNode both = expose(PREVIEW + FILM + "--sky-mag-arcsec2 " + (previewMag - 1));
        assertEquals(1.329, both.at("/situation/otherSkies/0/brighterStops").asDouble(), 0.01); // mag to 0.01
        assertEquals(expose(PREVIEW + FILM).at("/exposures/0/correctedS"),
        both.at("/exposures/0/correctedS"));
        assertTrue(both.get("remarks").toString().contains("1.3 stops apart"));
        JsonNode agreeing = expose(PREVIEW + FILM + "--sky-mag-arcsec2 " + (previewMag - 0.2));
        assertFalse(agreeing.get("remarks").toString().contains("apart"));
    }

    @Test
    void earlierOpeningIsCountedIn() throws IOException {
        double wholeS = expose(NIGHT + FILM + "--tone -2").at("/exposures/0/correctedS").asDouble();
        JsonNode again = expose(PLACE + "--from 2027-02-08T21:20 --altitude 45 --azimuth 180 " + FILM
                + "--tone -2 --open 2027-02-08T21:00/20m");
        // five digits each
        assertEquals(wholeS - 1200, again.at("/exposures/0/correctedS").asDouble(), 2e-5 * wholeS);
        assertEquals(1, again.at("/situation/earlier").size());
    }

    @Test
    void whatWasMadeBeforeNeedsNothingMore() throws IOException {
        JsonNode row = expose(NIGHT + FILM + "--tone -6 --open 2027-02-08T19:30/30m").at("/exposures/0");
        assertEquals(0, row.get("correctedS").asDouble());
        assertTrue(row.get("skyToneStops").asDouble() > -6);
        assertTrue(row.get("notes").toString().contains("have made the tone already"));
    }

    @Test
    void timeForAToneGivesThatToneBack() throws IOException {
        JsonNode row = expose(NIGHT + FILM + "--tone -2").at("/exposures/0");
        JsonNode back = expose(NIGHT + FILM + "--lasts " + row.get("correctedS").asDouble() + "s")
                .at("/exposures/0");
        assertEquals(-2, back.get("skyToneStops").asDouble(), 0.002); // stops to 0.001
        assertEquals(row.get("trailLimitMag"), back.get("trailLimitMag"));
    }

    @Test
    void groundThrowingBackTwiceTheLightIsMeteredInHalfTheTime() throws IOException {
        String ground = PLACE + "--at 2027-02-16T21:00 --altitude 45 --azimuth 330 " + FILM + "--ground ";
        JsonNode grass = expose(ground + "0.1");
        JsonNode sand = expose(ground + "0.2");
        double grassS = grass.at("/exposures/0/meteredS").asDouble();
        assertEquals(grassS / 2, sand.at("/exposures/0/meteredS").asDouble(), 2e-5 * grassS); // five digits
        assertEquals(0, grass.at("/exposures/0/groundToneStops").asDouble(), 0.001);
        // L = ρ E / π
        assertEquals(0.1 * grass.at("/situation/ground/lux").asDouble() / Math.PI,
                grass.at("/situation/ground/cdM2").asDouble(), 1e-3 * 0.01); // four digits
    }

    @Test
    void sheetsAreAStopApartAroundTheBestGuess() throws IOException {
        JsonNode row = expose(PREVIEW + FILM + "--sheets 3").at("/exposures/0");
        double bestS = row.get("correctedS").asDouble();
        for (int sheet = 0; sheet < 3; sheet++) {
            double expectedS = bestS * Math.pow(2, sheet - 1);
            // five digits
            assertEquals(expectedS, row.at("/bracket/exposuresS/" + sheet).asDouble(), 2e-5 * expectedS);
        }
    }

    @Test
    void tNumberTakesThePlaceOfFNumberAndTransmittance() throws IOException {
        // film-plane light goes with τ/N² = 1/T²: T 12 at f/10.5 meters like a lens without loss at f/12
        String sky = "--sky-mag-arcsec2 21 --film instant-mono-640 ";
        double tS = expose(sky + "--f-number 10.5 --t-stop 10.5/12").at("/exposures/0/meteredS").asDouble();
        double fS = expose(sky + "--f-number 12 --transmittance 1").at("/exposures/0/meteredS").asDouble();
        assertEquals(fS, tS, 2e-5 * fS); // five digits
    }

    @Test
    void mountDarkensTheCornersOfAWideApertureAlone() throws IOException {
        // cos⁴ for a corner 50 mm off the axis at 120 mm: 4 log2 cos 22.62° = −0.462 stops; the mount's stop
        // on top
        JsonNode asked = expose("--sky-mag-arcsec2 21 --film instant-mono-640 --focal-length 120 --frame "
                + "80x60 --f-number 8,16 --corner-stops 1");
        assertEquals(-1.462, asked.at("/situation/cornerStops").asDouble(), 0.001); // stops to 0.001
        assertEquals(-0.462, asked.at("/situation/cornerStopsStopped").asDouble(), 0.001);
        assertTrue(asked.get("remarks").toString()
                .contains("1.5 stops less light than its centre at f/8 and 0.5 at f/16"));
    }

    @Test
    void keenerEyeSeesFainterTrails() throws IOException {
        double usual = expose(PREVIEW + FILM).at("/exposures/0/trailLimitMag").asDouble();
        double keen = expose(PREVIEW + FILM + "--least-difference 0.05").at("/exposures/0/trailLimitMag")
                .asDouble();
        assertTrue(keen > usual);
    }

    @Test
    void exposureMayRunIntoTheDawnWhenItsTimeIsGiven() throws IOException {
        String dawn = PLACE + "--from 2027-02-09T06:00 --altitude 30 --azimuth 120 " + FILM;
        assertTrue(expose(dawn + "--lasts 90m").at("/exposures/0/skyToneStops").asDouble()
                > expose(dawn + "--lasts 30m").at("/exposures/0/skyToneStops").asDouble() + 5);
        assertEquals(2, Run.of(List.of(("expose " + dawn + "--lasts 4h").split(" "))).exit());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "--sky-mag-arcsec2 21 --ground 0.2 --iso 100 | light on the ground is computed",
        "--sky-mag-arcsec2 21 --lasts 1h --sheets 3 --iso 100 | not both",
        "--sky-mag-arcsec2 21 --sheets 10 --iso 100 | bracket 10 sheets is out of range; give 1 … 9 sheets",
        "--sky-mag-arcsec2 21 --iso 100 --corner-stops 1 | --corner-stops needs the frame",
        "--sky-mag-arcsec2 21 --iso 100 --frame 80x60 --corner-stops 5 | loss in the corner 5 stops is out "
        + "of range; give 0 … 4",
        "--sky-mag-arcsec2 21 --iso 100 --t-stop 11/12.3 --transmittance 0.9 | give one of the two",
        "--sky-mag-arcsec2 21 --iso 100 --t-stop 11/10 | T-number 10.08 is below the f-number 11.31",
        "--sky-mag-arcsec2 21 --iso 100 --t-stop 12.3 | such as 11/12.3",
        "--sky-mag-arcsec2 21 --least-difference 0 --iso 100 | least visible difference 0",
    })
    void whatCannotBeIsRefusedInOneLine(String args, String message) {
        Run run = Run.of(List.of(("expose " + args).split(" ")));
        assertEquals(2, run.exit());
        assertEquals("", run.out());
        assertTrue(run.err().lines().findFirst().orElse("").contains(message), run.err());
    }

    private static JsonNode expose(String args) throws IOException {
        List<String> all = new ArrayList<>(List.of("expose"));
        all.addAll(List.of(args.strip().split(" +")));
        all.addAll(List.of("--format", "json"));
        Run run = Run.of(all);
        assertEquals(0, run.exit(), run.err());
        return new ObjectMapper().readTree(run.out());
    }
}
