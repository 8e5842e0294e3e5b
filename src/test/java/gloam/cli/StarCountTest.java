package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** However it is asked, one sheet has one count of stars that mark it. */
class StarCountTest {

    private static final String NORMAL =
            "focal-length-mm: 120, frame-mm: {width: 80, height: 80}, f-numbers: [11]";
    /** Stars near its edge are dimmed by more than a stop, and move faster than at its centre. */
    private static final String WIDE =
            "focal-length-mm: 47, frame-mm: {width: 120, height: 90}, f-numbers: [5.6]";

    @TempDir
    Path folder;

    @Test
    void planTrailAndProofCountTheSameStars() throws IOException {
        assertOneCount(NORMAL, "azimuth-deg: 150, altitude-deg: 50", 20);
        assertOneCount(WIDE, "azimuth-deg: 180, altitude-deg: 45", 200);
        assertOneCount(NORMAL, "azimuth-deg: 0, altitude-deg: 41", 50);
    }

    private void assertOneCount(String camera, String aim, int least) throws IOException {
        Path trip = folder.resolve("trip.yaml");
        Files.writeString(trip, String.format(Locale.ROOT, """
                title: One night
                sites:
                  - {name: Loma, latitude-deg: 41.05, longitude-deg: -2.15, height-m: 1080, zone: Europe/Madrid}
                nights: {from: 2027-02-08, to: 2027-02-08}
                camera: {name: Box, %s}
                film: instant-mono-640
                sheets: 1
                wishes:
                  - {name: Stars, point: {%s}, sky: dark, tone-at-most-stops: 0,
                     exposure-min: {shortest: 90, longest: 120}}
                """, camera, aim));
        JsonNode plan = json("plan --trip " + trip + " --format json");
        JsonNode window = StreamSupport.stream(plan.get("nights").spliterator(), false)
                .flatMap(night -> StreamSupport.stream(night.get("windows").spliterator(), false)).findFirst()
                .orElseThrow();
        String sheet = " --trip " + trip + " --azimuth " + window.get("azimuthDeg") + " --altitude "
                + window.get("altitudeDeg") + " --f-number " + window.get("fNumber") + " --from "
                + window.get("openAt").asString() + " --lasts " + window.get("correctedS") + "s";
        JsonNode trail = json("trail" + sheet + " --format json");
        JsonNode proof = json("proof --size 40" + sheet + " --format json");
        int recorded = window.get("recordedStars").intValue();
        assertTrue(recorded >= least, window.toString());
        assertEquals(recorded, trail.at("/records/stars").intValue());
        assertEquals(recorded, proof.at("/trail/records/stars").intValue());
        assertEquals(window.get("framedStars"), trail.at("/records/catalogue/crossingStars"));
        assertEquals(trail.get("records"), proof.at("/trail/records"));
        assertEquals(6, window.get("catalogueToMag").doubleValue(), "the catalogue ends there");
        assertEquals(6, trail.at("/records/catalogue/toMag").doubleValue());
        assertTrue(Run.of(("trail" + sheet).split(" ")).out()
                .contains(recorded + " of " + window.get("framedStars") + " stars to mag 6"));
        assertEquals(recorded, json("trail" + sheet + " --every 1h --format json").at("/records/stars")
                .intValue(), "whatever points of a trail are listed");
    }

    @Test
    void starsAskedForByNameAreOfNoCatalogue() {
        JsonNode trail = json("trail --place 41.05,-2.15,1080 --zone Europe/Madrid --focal-length 120 "
                + "--frame 80x80"
                + " --azimuth 150 --altitude 50 --from 2027-02-08T21:00 --lasts 2h --iso 100 --f-number 11"
                + " --star 152.1,12.0 --format json");
        assertTrue(trail.at("/records/catalogue").isNull());
    }

    private static JsonNode json(String line) {
        Run run = Run.of(line.split(" "));
        assertEquals(0, run.exit(), run.err());
        return JsonMapper.shared().readTree(run.out());
    }
}
