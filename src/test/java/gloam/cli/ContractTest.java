package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Set;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** The fields that the JSON of each command promises to others (schema {@code gloam/2}). */
class ContractTest {

    private static final String PLACE = "--lat 41.05 --lon -2.15 --height 1080 --zone Europe/Madrid ";

    private static final List<String> NIGHT =
            List.of("night", "site", "events", "darkHours", "moonlessDarkHours", "moon", "score", "reason");
    private static final Set<String> WHAT = Set.of("sunset", "sunrise", "civil-dusk", "civil-dawn",
            "nautical-dusk",
            "nautical-dawn", "astronomical-dusk", "astronomical-dawn", "moonrise", "moonset", "moon-transit");

    @Test
    void skyAtAnInstant() throws IOException {
        JsonNode sky = json("sky " + PLACE + "--at 2027-02-08T22:30 --star 84,-1.5");
        assertFields(sky, "at", "bodies", "stars", "light");
        assertEquals(List.of("sun", "moon", "mercury", "venus", "mars", "jupiter", "saturn", "uranus",
                "neptune"), StreamSupport.stream(sky.get("bodies").spliterator(), false)
                        .map(body -> body.get("name").asString()).toList());
        assertFields(sky.at("/bodies/0"), "name", "azimuthDeg", "airlessAltitudeDeg", "apparentAltitudeDeg",
                "rightAscensionDeg", "declinationDeg", "distanceKm", "magnitude", "illuminatedFraction",
                "phaseAngleDeg");
        assertFields(sky.get("light"), "zenithMagArcsec2", "zodiacalCdM2", "starsCdM2", "airglowCdM2",
                "moonCdM2", "twilightCdM2", "groundLux");
    }

    @Test
    void skyOfANightAndNights() throws IOException {
        for (String command : List.of("sky " + PLACE + "--night 2027-02-12",
                "nights " + PLACE + "--from 2027-02-12 --to 2027-02-12")) {
            JsonNode night = json(command).at("/nights/0");
            assertFields(night, NIGHT.toArray(String[]::new));
            assertTrue(night.get("events").size() >= 10, command);
            for (JsonNode event : night.get("events")) {
                assertTrue(WHAT.contains(event.get("what").asString()), event.toString());
                assertEquals("+01:00", OffsetDateTime.parse(event.get("at").asString()).getOffset().getId());
            }
        }
    }

    @Test
    void expose() throws IOException {
        JsonNode exposures = json("expose --preview-f-number 2 --preview-iso 640 --preview-exposure 30s "
                + "--iso 640 --reciprocity power:1.31 --f-number 12,f/16");
        assertFields(exposures, "situation", "exposures");
        assertFields(exposures.at("/exposures/0"), "fNumber", "meteredS", "correctedS", "correctedLowS",
                "correctedHighS", "reciprocityStops", "extrapolated", "neverFinishes", "skyToneStops",
                "trailLimitMag", "notes");
    }

    @Test
    void trail() throws IOException {
        JsonNode trail = json("trail --trip demo-data/trip.yaml --azimuth 0 --altitude 41 --from "
                + "2027-02-08T21:00 --lasts 2h --every 1h");
        assertFields(trail, "frame", "tracks", "pole");
        assertFields(trail.at("/tracks/0"), "name", "kind", "magnitude", "records", "points", "lengthMm",
                "directionDeg", "sagittaMm", "leavesFrame");
        assertFields(trail.at("/tracks/0/points/0"), "at", "xMm", "yMm");
    }

    @Test
    void plan() throws IOException {
        JsonNode plan = json("plan --trip demo-data/trip.yaml");
        assertFields(plan, "nights", "sheetsUsed", "cautions");
        JsonNode night = plan.at("/nights/0");
        assertFields(night, "night", "site", "windows", "refused");
        assertFields(night.at("/windows/0"), "sheet", "wish", "openAt", "closeAt", "fNumber", "meteredS",
                "correctedS", "skyToneStops", "skyToneSpreadStops", "trailLimitMag", "trailLengthMm",
                "trailDirectionDeg", "moon", "score", "reason");
        assertFields(night.at("/refused/0"), "wish", "reason");
    }

    private static JsonNode json(String command) throws IOException {
        JsonNode json = Run.json(command);
        assertEquals("gloam/2", json.get("schema").asString());
        assertEquals("2027-01-15T10:00:00Z",
                OffsetDateTime.parse(json.get("generatedAt").asString()).toInstant().toString());
        return json;
    }

    private static void assertFields(JsonNode node, String... names) {
        for (String name : names) {
            assertTrue(node.has(name), () -> "no field " + name + " in " + node);
        }
    }
}
