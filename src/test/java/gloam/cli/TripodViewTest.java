package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** What is seen from behind the camera, against what other questions say of the same sky. */
class TripodViewTest {

    private static final String SITE = " --trip demo-data/trip.yaml --site Loma\u00a0Callada";
    private static final String SHEET = SITE
            + " --azimuth 250 --altitude 14 --roll 10 --from 2027-02-08T20:00 --lasts 40m";

    /** A camera turned from the star by what is said of it has the star in its centre. */
    @Test
    void theStarToAimByStandsWhereItIsSaidTo() {
        JsonNode star = Run.json("trail" + SHEET).at("/view/aimStar");
        double azimuthDeg = 250 - star.get("centreAzimuthDeg").doubleValue();
        double altitudeDeg = 14 - star.get("centreAltitudeDeg").doubleValue();
        JsonNode there = Run.json("trail" + SITE + " --from 2027-02-08T20:00 --lasts 1s --azimuth "
                + azimuthDeg + " --altitude " + altitudeDeg);
        JsonNode track = StreamSupport.stream(there.get("tracks").spliterator(), false).filter(found ->
                found.get("name").equals(star.get("name"))).findFirst().orElseThrow();
        assertEquals(0, track.at("/points/0/xMm").doubleValue(), 0.02);
        assertEquals(0, track.at("/points/0/yMm").doubleValue(), 0.02);
        String words = "at 20:00 the frame's centre is "
                + "%.1f".formatted(star.get("centreAzimuthDeg").doubleValue()) + "\u00b0 of azimuth right of "
                + star.get("name").asString();
        assertTrue(Run.printed("trail" + SHEET).replace("\n", " ").contains(words), words);
    }

    @Test
    void theMoonsWayIsThatOfTheSky() {
        JsonNode moon = StreamSupport.stream(Run.json("trail" + SHEET).at("/view/moon").spliterator(), false)
                .filter(at -> at.get("at").asString().contains("T19:00")).findFirst().orElseThrow();
        JsonNode sky = Run.json("sky" + SITE + " --at 2027-02-08T19:00");
        JsonNode body = StreamSupport.stream(sky.get("bodies").spliterator(), false).filter(found ->
                found.get("name").asString().equals("moon")).findFirst().orElseThrow();
        assertEquals(body.get("azimuthDeg").doubleValue(), moon.get("azimuthDeg").doubleValue(), 0.01);
        assertEquals(body.get("apparentAltitudeDeg").doubleValue(), moon.get("altitudeDeg").doubleValue(),
                0.01);
    }

    /** Clockwise from behind: the frame's left side goes up, its right side down. */
    @Test
    void theFrameIsTurnedAsTheCameraIs() {
        JsonNode frame = Run.json("trail" + SHEET).at("/view/frame");
        double leftDeg = frame.get(0).get("altitudeDeg").doubleValue();
        double rightDeg = frame.get(8).get("altitudeDeg").doubleValue();
        assertTrue(leftDeg > rightDeg + 5, leftDeg + " " + rightDeg);
        assertEquals(frame.get(0), frame.get(32));
    }

    /** The land on the sheet's drawing lies where the skyline of the site runs. */
    @Test
    void theSkylineRunsOverTheSheet() {
        JsonNode trail = Run.json("trail" + SHEET);
        assertTrue(trail.get("skyline").size() > 20);
        assertTrue(Run.printed("trail" + SHEET + " --format svg").contains("<polygon"));
        assertEquals(0, Run.json("trail" + SITE
                + " --azimuth 250 --altitude 60 --from 2027-02-08T20:00 --lasts 40m")
                .get("skyline").size());
        trail.get("edges").forEach(edge -> {
            String name = edge.get("edge").asString().equals("bottom") ? "azimuthDeg" : "altitudeDeg";
            assertEquals(0, Math.IEEEremainder(edge.get(name).doubleValue(), 5), 1e-6, edge.toString());
        });
    }

    /** Thin is every way; the stronger, inside the frame, the further its trail rises above the sky. */
    @Test
    void trailsAreAsStrongAsTheyRecord() {
        JsonNode trail = Run.json("trail" + SHEET + " --film instant-mono-640 --f-number 8");
        String svg = Run.printed("trail" + SHEET + " --film instant-mono-640 --f-number 8 --tripod"
                + " --format svg");
        List<String> strokes = Pattern.compile("<polyline [^>]*class=\"trail\" stroke-width=\"([\\d.]+)\"")
                .matcher(svg.substring(svg.indexOf("<g clip-path=\"url(#in-frame)\">"))).results()
                .map(line -> line.group(1)).toList();
        List<String> recorded = new ArrayList<>();
        trail.at("/view/ways").forEach(way -> trail.get("tracks").forEach(track -> {
            if (track.get("name").equals(way.get("name")) && track.get("records").asBoolean()) {
                double stops = Math.max(1, Math.min(9, track.get("stopsOverSky").doubleValue()));
                recorded.add(String.format(Locale.ROOT, "%.2f", 0.2 + 0.1 * stops));
            }
        }));
        assertTrue(recorded.stream().distinct().count() > 1, recorded::toString);
        assertEquals(recorded, strokes);
        assertEquals(trail.at("/view/ways").size(), Pattern.compile("class=\"trail\" stroke-width=\"0.20\"")
                .matcher(svg).results().count());
        assertTrue(svg.contains("9 stops over the sky"), svg);
        String unknown = Run.printed("trail --place 41.05,-2.15,1080 --zone Europe/Madrid --focal-length 120"
                + " --frame 80x80 --azimuth 250 --altitude 14 --from 2027-02-08T20:00 --lasts 40m --tripod"
                + " --format svg");
        assertFalse(unknown.contains("stops over the sky"), unknown);
    }

    @Test
    void itIsDrawnWhereItIsAskedFor() {
        String svg = Run.printed("trail" + SHEET + " --tripod --format svg");
        assertTrue(svg.contains("From behind the camera") && svg.contains("Europe/Madrid"), svg);
        assertTrue(Run.printed("trail" + SHEET + " --format html").contains("From behind the camera"));
    }
}
