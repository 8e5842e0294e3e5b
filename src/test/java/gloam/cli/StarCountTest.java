package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** However it is asked, one sheet has one count of stars that mark it. */
class StarCountTest {

    private static final String NORMAL =
            "focal-length-mm: 120, frame-mm: {width: 80, height: 80}, f-numbers: [11]";
    /** Stars near its edge are dimmed by more than a stop, and move faster than at its centre. */
    private static final String WIDE =
            "focal-length-mm: 47, frame-mm: {width: 120, height: 90}, f-numbers: [5.6]";

    private static final String SHEET = " --place 41.05,-2.15,1080 --zone Europe/Madrid --focal-length 120 "
            + "--frame 80x80 --azimuth 150 --altitude 50 --from 2027-02-08T21:30 --lasts 1h "
            + "--film instant-mono-640";

    @TempDir
    Path folder;

    @Test
    void planTrailAndProofCountTheSameStars() throws IOException {
        assertOneCount(NORMAL, "azimuth-deg: 150, altitude-deg: 50", 20);
        assertOneCount(WIDE, "azimuth-deg: 180, altitude-deg: 45", 200);
        assertOneCount(NORMAL, "azimuth-deg: 0, altitude-deg: 41", 50);
    }

    /** A sheet half a magnitude deeper, or less deep, by its f-number has as many more or fewer stars. */
    @Test
    void whatACountMayBeWrongByIsWhatHalfAMagnitudeMakesOfIt() throws IOException {
        JsonNode trail = trail(SHEET + " --f-number 11");
        double atMag = trail.at("/sheet/trailLimitMag").doubleValue();
        int recorded = trail.at("/records/stars").intValue();
        int spread = trail.at("/records/catalogue/starsSpread").intValue();
        List<Double> offMag = new ArrayList<>();
        List<Integer> off = new ArrayList<>();
        for (double fNumber : List.of(8.0, 9.0, 10.0, 12.0, 13.5, 15.0)) {
            JsonNode other = trail(SHEET + " --f-number " + fNumber);
            offMag.add(other.at("/sheet/trailLimitMag").doubleValue() - atMag);
            off.add(other.at("/records/stars").intValue());
        }
        for (int i = 0; i < off.size(); i++) {
            double shareOfSpread = Math.abs(offMag.get(i)) / 0.5;
                    // a trail limit is known to half a magnitude
            // numbers of stars grow evenly by their logarithm, here within a third
            if (shareOfSpread > 0.6 && shareOfSpread < 1.4) {
                assertEquals(shareOfSpread * spread, Math.abs(off.get(i) - recorded), spread / 2.0,
                        offMag + " " + off);
            }
        }
        assertTrue(spread > 3, trail.get("records").toString());
        assertTrue(Run.of(("trail" + SHEET + " --f-number 11").split(" ")).out()
                .contains(recorded + " ± " + spread + " of "));
    }

    /**
     * Stars beyond the catalogue are estimated and said to be; where the limit is brighter there are none.
     */
    @Test
    void fainterStarsThanTheCatalogueHasAreEstimated() {
        JsonNode shallow = trail(SHEET + " --f-number 22");
        assertTrue(shallow.at("/sheet/trailLimitMag").doubleValue() < 4);
        assertEquals(0, shallow.at("/records/catalogue/fainterStars").intValue());
        String light = SHEET.replace("1h", "30m") + " --f-number 4"; // an hour leaves the film no tones
        JsonNode deep = trail(light);
        double limitMag = deep.at("/sheet/trailLimitMag").doubleValue();
        int crossing = deep.at("/records/catalogue/crossingStars").intValue();
        assertEquals(crossing, deep.at("/records/stars").intValue(), "all of the catalogue");
        // OEIS A053406: 4968 stars to magnitude 6, 15328 to 7, 40858 to 8
        assertTrue(limitMag > 7 && limitMag < 8, () -> "limit " + limitMag);
        int fainter = deep.at("/records/catalogue/fainterStars").intValue();
        assertTrue(fainter > crossing * (15328.0 / 4968 - 1) * 0.8
                && fainter < crossing * (40858.0 / 4968 - 1), () -> fainter + " of " + crossing);
        assertTrue(Run.of(("trail" + light).split(" ")).out()
                .replaceAll("\\s+", " ").contains(" fainter (estimated) mark this sheet"));
    }

    /**
     * The limit of one sheet is the same whoever tells it, at the centre, in a corner's place, at the pole.
     */
    @Test
    void exposeAndTrailTellOneLimit() {
        for (String aim : List.of("150 50", "176.5 35.2", "0 41.05", "320 22")) {
            String at = " --azimuth " + aim.split(" ")[0] + " --altitude " + aim.split(" ")[1];
            String sheet = SHEET.replace(" --azimuth 150 --altitude 50", at) + " --f-number 8";
            double trailMag = trail(sheet).at("/sheet/trailLimitMag").doubleValue();
            assertEquals(trailMag, Run.json("expose" + sheet)
                    .at("/exposures/0/trailLimitMag").doubleValue(), 0.01, aim);
        }
    }

    private static JsonNode trail(String sheet) {
        return Run.json("trail" + sheet);
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
        JsonNode plan = Run.json("plan --trip " + trip);
        JsonNode window = StreamSupport.stream(plan.get("nights").spliterator(), false)
                .flatMap(night -> StreamSupport.stream(night.get("windows").spliterator(), false)).findFirst()
                .orElseThrow();
        String sheet = " --trip " + trip + " --azimuth " + window.get("azimuthDeg") + " --altitude "
                + window.get("altitudeDeg") + " --f-number " + window.get("fNumber") + " --from "
                + window.get("openAt").asString() + " --lasts " + window.get("correctedS") + "s";
        JsonNode trail = Run.json("trail" + sheet);
        JsonNode proof = Run.json("proof --size 40" + sheet);
        double limitMag = window.get("trailLimitMag").doubleValue();
        assertEquals(limitMag, trail.at("/sheet/trailLimitMag").doubleValue(), 0.01);
        assertEquals(limitMag, proof.at("/trail/sheet/trailLimitMag").doubleValue(), 0.01);
        assertEquals(limitMag, Run.json("expose" + sheet).at("/exposures/0/trailLimitMag")
                .doubleValue(), 0.01);
        int recorded = window.get("recordedStars").intValue();
        assertTrue(recorded >= least, window.toString());
        assertEquals(recorded, trail.at("/records/stars").intValue());
        assertEquals(recorded, proof.at("/trail/records/stars").intValue());
        assertEquals(window.get("framedStars"), trail.at("/records/catalogue/crossingStars"));
        assertEquals(trail.get("records"), proof.at("/trail/records"));
        assertEquals(6, window.get("catalogueToMag").doubleValue(), "the catalogue ends there");
        assertEquals(6, trail.at("/records/catalogue/toMag").doubleValue());
        assertEquals(window.get("recordedStarsSpread"), trail.at("/records/catalogue/starsSpread"));
        assertEquals(window.get("fainterStars"), trail.at("/records/catalogue/fainterStars"));
        String spread = window.get("recordedStarsSpread").intValue() == 0 ? ""
                : " ± " + window.get("recordedStarsSpread");
        assertTrue(Run.of(("trail" + sheet).split(" ")).out()
                .contains(recorded + spread + " of " + window.get("framedStars") + " stars to mag 6"));
        assertTrue(window.get("reason").asString().contains(recorded + spread + " of "), window.toString());
        assertEquals(recorded, Run.json("trail" + sheet + " --every 1h").at("/records/stars")
                .intValue(), "whatever points of a trail are listed");
    }

    @Test
    void starsAskedForByNameAreOfNoCatalogue() {
        JsonNode trail = Run.json("trail --place 41.05,-2.15,1080 --zone Europe/Madrid --focal-length 120 "
                + "--frame 80x80"
                + " --azimuth 150 --altitude 50 --from 2027-02-08T21:00 --lasts 2h --iso 100 --f-number 11"
                + " --star 152.1,12.0");
        assertTrue(trail.at("/records/catalogue").isNull());
    }
}
