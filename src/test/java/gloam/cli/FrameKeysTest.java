package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Keys of a wish that say what stands in its frame, and where. */
class FrameKeysTest {

    /** The full Moon of 22 March 2027 rises in the east; the frame is 37 degrees wide. */
    private static final String TRIP = """
            sites:
              - {name: Heath, latitude-deg: 47.9, longitude-deg: 9.4, height-m: 700, zone: Europe/Zurich}
            nights: {from: 2027-03-22, to: 2027-03-22}
            camera: {focal-length-mm: 120, frame-mm: 80x80, f-numbers: [8, 16, 32, 64, 128, 256]}
            film: instant-mono-640
            sheets: 1
            wishes:
              - name: w
                point: {azimuth-deg: 130, altitude-deg: 25}
                exposure-min: {shortest: 10, longest: 20}
            """;

    @TempDir
    Path folder;
    private TripText trip;

    @BeforeEach
    void trip() {
        trip = new TripText(TRIP, folder);
    }

    private static double number(JsonNode window, String... path) {
        JsonNode at = window;
        for (String key : path) {
            at = at.get(key);
        }
        return at.doubleValue();
    }

    @Test
    void theMoonIsInTheFrameOrOutOfIt() throws IOException {
        JsonNode in = trip.with("exposure-min", "moon: in-frame\n    exposure-min").windows().get(0);
        assertTrue(Math.abs(number(in, "moon", "azimuthDeg") - 130) < 22, in::toString);
        assertTrue(Math.abs(number(in, "moon", "apparentAltitudeDeg") - 25) < 19, in::toString);
        for (String out : List.of("", "moon: out-of-frame\n    ", "moon: {frame: out-of-frame}\n    ")) {
            JsonNode window = trip.with("exposure-min", out + "exposure-min").windows().get(0);
            assertTrue(Math.abs(number(window, "moon", "azimuthDeg") - 130) > 17
                    || Math.abs(number(window, "moon", "apparentAltitudeDeg") - 25) > 17
                    || number(window, "moon", "apparentAltitudeDeg") < 0, window::toString);
        }
        assertEquals("the Moon is not in the frame while the Sun is down", trip.with("azimuth-deg: 130",
                "azimuth-deg: 10").with("exposure-min", "moon: in-frame\n    exposure-min").refusal());
    }

    @Test
    void aMoonInTheFrameGoesWithItsOtherLimits() throws IOException {
        JsonNode low = trip.with("exposure-min",
                "moon: {frame: in-frame, altitude-deg: {most: 14}}\n    exposure-min").windows().get(0);
        assertTrue(number(low, "moon", "apparentAltitudeDeg") < 14.1, low::toString);
        assertTrue(trip.with("exposure-min", "moon: in-frame\n    exposure-min").checked()
                .contains("; Moon in the frame;"));
        assertTrue(trip.checked().contains("; Moon out of the frame;"));
    }

    @Test
    void aPictureOfTheMoonCannotKeepItOut() throws IOException {
        String fault = ":10:11 wishes[0].moon: the Moon is followed or must record, so it cannot be out of "
                + "the " + "frame. Take one of the two away.";
        TripText out = trip.with("exposure-min", "moon: out-of-frame\n    exposure-min");
        assertTrue(out.with("exposure-min", "records: moon\n    exposure-min").fault().contains(fault));
        assertTrue(out.with("point: {azimuth-deg: 130, altitude-deg: 25}", "follow: {body: moon}").fault()
                .contains(fault));
        assertTrue(trip.with("exposure-min", "moon: in-fram\n    exposure-min").fault().contains(
                ":10:11 wishes[0].moon: expected in-frame or out-of-frame, found \"in-fram\". Did you mean "
                + "in-frame?"));
    }

    private TripText following(String where) {
        return trip.with("point: {azimuth-deg: 130, altitude-deg: 25}", "follow: {star: Arcturus, " + where
                + "}");
    }

    @Test
    void whatIsFollowedStandsWhereItIsWanted() throws IOException {
        for (String where : List.of("altitude-deg: {least: 20, most: 30}",
                "azimuth-deg: {from: 100, to: 110}",
                "azimuth-deg: {from: 240, to: 110}", "altitude-deg: {least: 60}")) {
            JsonNode window = following(where).windows().get(0);
            double altitudeDeg = number(window, "altitudeDeg");
            double azimuthDeg = number(window, "azimuthDeg");
            assertTrue(switch (where.replaceAll("\\D", "")) {
                case "2030" -> altitudeDeg > 19.9 && altitudeDeg < 30.1;
                case "100110" -> azimuthDeg > 99.9 && azimuthDeg < 110.1;
                case "240110" -> azimuthDeg > 239.9 || azimuthDeg < 110.1;
                default -> altitudeDeg > 59.9;
            }, where + ": " + window);
        }
    }

    @Test
    void whatNeverStandsThereIsRefusedAndSaysSo() throws IOException {
        assertEquals("never Arcturus at least 80° high while the Sun is down",
                following("altitude-deg: {least: 80}").refusal());
        assertEquals("never Arcturus between azimuths 350° and 10° while the Sun is down",
                following("azimuth-deg: {from: 350, to: 10}").refusal());
        assertTrue(following("azimuth-deg: {from: 350, to: 10}, altitude-deg: {least: 20}").checked()
                .contains("follow Arcturus, altitude from 20°, azimuth between 350° and 10°, roll 0°"));
        assertTrue(following("azimuth-deg: {from: 20, to: 20}").fault()
                .contains(":9:43 wishes[0].follow.azimuth-deg: from and to are the same azimuth; give two"));
        assertTrue(following("azimuth-deg: {from: 20}").fault()
                .contains("wishes[0].follow.azimuth-deg.to: is missing"));
        assertTrue(following("altitude-deg: {least: 91}").fault()
                .contains("wishes[0].follow.altitude-deg.least: altitude 91 deg is out of range"));
    }

    private TripText recording(String what) {
        return trip.with("point: {azimuth-deg: 130, altitude-deg: 25}",
                "follow: {star: Regulus}\n    records: " + what);
    }

    @Test
    void eachOfAListMustRecord() throws IOException {
        JsonNode window = recording("[mars, jupiter, Regulus]").windows().get(0);
        assertTrue(window.get("reason").stringValue().contains(", Mars and Jupiter and Regulus and "),
                window::toString);
        assertTrue(recording("Regulus").windows().get(0).get("reason").stringValue()
                .contains(", Regulus and "));
        assertTrue(recording("[mars, jupiter, Regulus]").checked()
                .contains("records Mars and Jupiter and Regulus"));
    }

    @Test
    void oneThatDoesNotRecordIsEnoughToRefuse() throws IOException {
        assertEquals("Vega is not in the frame while the Sun is down; possible from 20:18 if less needs to "
                + "record", recording("[mars, Vega]").refusal());
        TripText narrow = trip.with("8, 16, 32, 64, 128, 256", "32");
        assertEquals(1, new TripText(narrow.text(), folder)
                .with("point: {azimuth-deg: 130, altitude-deg: 25}",
                "follow: {star: Regulus}\n    records: [jupiter]").windows().size());
        String refusal = narrow.with("point: {azimuth-deg: 130, altitude-deg: 25}",
                "follow: {star: Regulus}\n    records: [jupiter, \"\u03b7 Leo\"]").refusal();
        assertTrue(refusal.matches("(?s).*Al Jabhah would not record: .* mag too faint at f/32 .*"), refusal);
    }

    @Test
    void onlyWhatHasAKnownBrightnessMayHaveToRecord() throws IOException {
        assertTrue(recording("[mars, Orion]").fault()
                .contains(":10:21 wishes[0].records[1]: how bright \"Orion\" is, is "
                + "not known. Name a body or a star of the catalogue."));
        assertTrue(recording("sun").fault().contains("wishes[0].records: the Sun is never to be pointed at"));
        assertTrue(recording("[mars, Regulos]").fault()
                .contains(":10:21 wishes[0].records[1]: nothing in the sky is named \"Regulos\""));
        assertTrue(recording("[]").fault()
                .contains("wishes[0].records: number of bodies and stars 0 is out of range"));
    }
}
