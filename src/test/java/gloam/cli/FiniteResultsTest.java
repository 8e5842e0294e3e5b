package gloam.cli;

import static gloam.cli.Finite.checked;
import static gloam.cli.Finite.json;
import static gloam.cli.Finite.with;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gloam.support.Samples;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;

/** At the edges of what a camera, a place and a night may be, every number of every output is a number. */
class FiniteResultsTest {

    /** Sides of a frame around which no trail drawn on it can be longer than a few rounds. */
    private static final double MOST_SIDES = 20;

    static Stream<Named<List<String>>> cameras() {
        return Samples.of(20, FiniteResultsTest::camera);
    }

    /** A camera somewhere: wide frames, fisheyes, long exposures, poles, the zenith and the horizon. */
    private static List<String> camera(RandomGenerator random) {
        double latitudeDeg = List.of(0.0, 90.0, -90.0, 42.1, random.nextDouble(-90, 90))
                .get(random.nextInt(5));
        boolean pole = random.nextInt(3) == 0;
        double altitudeDeg = pole ? Math.abs(latitudeDeg)
                : List.of(0.0, 90.0, -20.0, random.nextDouble(0, 90)).get(random.nextInt(4));
        double azimuthDeg = pole ? (latitudeDeg < 0 ? 180 : 0)
                : List.of(0.0, 180.0, 360.0, random.nextDouble(0, 360)).get(random.nextInt(4));
        double fNumber = List.of(1.4, 8.0, 90.0, 360.0).get(random.nextInt(4));
        List<String> args = new ArrayList<>(List.of("--place", text(latitudeDeg) + ","
                + text(random.nextDouble(-180, 180)) + ",100",
                "--zone", "UTC", "--azimuth", text(azimuthDeg), "--altitude", text(altitudeDeg),
                "--focal-length", text(Math.exp(random.nextDouble(Math.log(6), Math.log(400)))),
                "--projection", List.of("rectilinear", "equidistant", "equisolid").get(random.nextInt(3)),
                "--f-number", text(fNumber), "--film", "instant-mono-640"));
        args.add("--frame=" + text(random.nextDouble(20, 400)) + "x" + text(random.nextDouble(20, 400)));
        return args;
    }

    private static String text(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }

    @ParameterizedTest
    @MethodSource("cameras")
    void trailsAreFinite(List<String> camera) throws JacksonException {
        List<String> trails = with(camera, "trail", "--star", "83.6,-5.4", "--star", "10.7,88.9", "--open",
                "2027-12-20T18:00Z/5h", "--open", "2027-12-21T00:00Z/8h");
        json(trails).ifPresent(trail -> trail.at("/starsHere").forEach(here -> assertOnSheet(here, trail)));
    }

    @Test
    void aDayOfTrailsIsFiniteInTextAndDrawing() {
        for (Named<List<String>> camera : cameras().skip(7).limit(3).toList()) {
            List<String> day = with(camera.getPayload(), "trail", "--star", "10.7,88.9", "--from",
                    "2027-12-20T20:00Z", "--lasts", "24h");
            checked(day);
            checked(with(day.subList(1, day.size()), "trail", "--format", "svg"));
        }
    }

    private static void assertOnSheet(JsonNode row, JsonNode trail) {
        double sideMm = Math.max(trail.at("/frame/widthMm").doubleValue(), trail.at("/frame/heightMm")
                .doubleValue());
        assertTrue(row.path("lengthMm").asDouble() <= MOST_SIDES * sideMm, () -> row + " on " + sideMm
                + " mm");
    }

    @ParameterizedTest
    @MethodSource("cameras")
    void exposuresAreFinite(List<String> camera) throws JacksonException {
        json(with(camera, "expose", "--at", "2027-03-20T23:00Z"));
        json(with(camera, "expose", "--from", "2027-03-20T22:00Z", "--lasts", "2h"));
        checked(with(camera, "expose", "--at", "2027-03-20T23:00Z"));
    }

    @Test
    void proofsAreFinite() throws JacksonException {
        for (Named<List<String>> camera : cameras().limit(4).toList()) {
            List<String> proof = with(camera.getPayload(), "proof", "--from", "2027-03-20T22:00Z", "--lasts",
                    "1h", "--size", "16");
            json(proof);
            proof.addAll(List.of("--format", "svg"));
            checked(proof);
        }
    }

    @ParameterizedTest
    @MethodSource("cameras")
    void levelTrailsAreFinite(List<String> camera) throws JacksonException {
        List<String> level = new ArrayList<>(camera.subList(0, 4));
        level.addAll(camera.subList(8, 12));
        level.add(camera.get(camera.size() - 1));
        json(with(level, "trail", "--level", "jupiter", "--from", "2026-12-10", "--within", "40"));
    }

    @Test
    void aTrailThatRunsBehindTheCameraEndsAtTheSheet() throws JacksonException {
        JsonNode trail = json(List.of("trail", "--azimuth", "180", "--altitude", "49", "--place",
                "41,-2,1000", "--zone", "UTC",
                "--focal-length", "120", "--frame", "80x80", "--from", "2026-12-20T17:30Z", "--lasts", "13h",
                "--airless", "--star", "83.6,-5.4"))
                .orElseThrow();
        // the equator runs straight over the frame
        assertEquals(80, trail.at("/starsHere/0/lengthMm").doubleValue(), 0.01);
        // f times the Earth's turn, 7.292e-5 rad/s, in an hour; the chord of two seconds
        assertEquals(120 * 7.292115e-5 * 3600, trail.at("/starsHere/0/speedMmH").doubleValue(), 1e-3);
        assertEquals(0, trail.at("/starsHere/0/sagittaMm").doubleValue(), 0.01);
        assertEquals(5, trail.at("/starsHere").size());
    }

    @Test
    void whatOnlyTouchesACornerDrawsNothing() throws JacksonException {
        JsonNode trail = json(List.of("trail", "--azimuth", "0", "--altitude", "41", "--place", "41,-2,1000",
                "--zone", "UTC",
                "--focal-length", "120", "--frame", "80x80", "--from", "2026-12-20T20:00Z", "--lasts", "3h",
                "--airless", "--star", "10.7,88.9"))
                .orElseThrow();
        assertTrue(trail.at("/starsHere/0/point").booleanValue(), "the pole's star at the centre");
        for (int corner = 1; corner < 5; corner++) {
            assertTrue(trail.at("/starsHere/" + corner + "/lengthMm").isNull());
            // on a circle through the corners about the pole
            assertEquals(40 * Math.sqrt(2) * 7.292115e-5 * 3600,
                    trail.at("/starsHere/" + corner + "/speedMmH").doubleValue(), 0.02);
        }
    }

    /** Each latitude of two decimals near one at which the triangle's sine comes out above 1. */
    @ParameterizedTest
    @ValueSource(doubles = {42.1, 40.0, 15.0, 60.0, 75.0, 20.5})
    void anAimAtThePoleHasADeclination(double latitudeDeg) throws JacksonException {
        for (int hundredths = 0; hundredths < 12; hundredths++) {
            String latitude = text(latitudeDeg + hundredths / 100.0);
            JsonNode expose = json(List.of("expose", "--place", latitude + ",-2.15,1080", "--zone", "UTC",
                    "--at",
                    "2027-02-08T22:00Z", "--azimuth", "0", "--altitude", latitude, "--focal-length", "150",
                    "--frame", "80x80", "--film", "instant-mono-640", "--f-number", "8")).orElseThrow();
            assertEquals(90, expose.at("/situation/aimDeclinationDeg").doubleValue(), 1e-9);
            // half-way from the centre to the edge: atan(20/150)
            assertEquals(90 - Math.toDegrees(Math.atan(20.0 / 150)),
                    expose.at("/situation/starDeclinationDeg").doubleValue(), 0.005);
        }
    }

    /**
     * A star's own limit of a fisheye is the half-space before it: nothing of the land behind draws on the
     * sheet.
     */
    @Test
    void aFisheyeSeesNoMoonBehindIt() throws JacksonException {
        JsonNode trail = json(List.of("trail", "--place", "-85,154,0", "--zone", "UTC", "--focal-length",
                "100", "--frame",
                "11x14in", "--projection", "equisolid", "--azimuth", "0", "--altitude", "0", "--from",
                "2027-03-29T07:45Z", "--lasts", "1h", "--iso", "100")).orElseThrow();
        assertFalse(trail.toString().contains("\"moon\",\"magnitude\""), "the Moon stands in the south");
    }
}
