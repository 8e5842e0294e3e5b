package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** A picture that the Moon is in is judged by its sky away from the halo, moonlight included. */
class MoonTrailPlanTest {

    @TempDir
    Path folder;

    private JsonNode window(String night, double toneStops, String aim) throws IOException {
        Path trip = Files.writeString(folder.resolve("trip.yaml"), """
                sites:
                  - {name: Loma, place: "41.05,-2.15,1080", zone: Europe/Madrid}
                nights: {from: %s, to: %s}
                camera: {name: Box, focal-length-mm: 75, frame-mm: 80x80, f-numbers: [4, 5.6, 8, 11, 16]}
                film: instant-mono-640
                sheets: 1
                wishes:
                  - {name: Moon, %s, tone-stops: %s, sun-depth-deg: {least: 18},
                     exposure-min: {shortest: 30, longest: 60}}
                """.formatted(night, night, aim, toneStops));
        return Run.json("plan --trip " + trip).at("/nights/0/windows/0");
    }

    /**
     * A crescent on a dark sky; its tone is that which expose shows for a sky 15° beside it, half a stop
     * for the place: not that of its own place, two stops lighter and more.
     */
    @Test
    void aMoonTrailOnADarkSkyIsPlanned() throws IOException {
        JsonNode window = window("2027-02-11", -2, "follow: {body: moon}");
        assertTrue(window.isObject(), window.toString());
        double beside = tone(window, window.get("azimuthDeg").doubleValue() + 15);
        double at = tone(window, window.get("azimuthDeg").doubleValue());
        assertEquals(beside, window.get("skyToneStops").doubleValue(), 0.5);
        assertTrue(at > beside + 2, at + " " + beside);
    }

    /** So is one of a camera that stands still, towards which the Moon runs. */
    @Test
    void aFixedFrameThatTheMoonIsInIsJudgedByTheFrame() throws IOException {
        JsonNode followed = window("2027-02-11", -2, "follow: {body: moon}");
        JsonNode window = window("2027-02-11", -2, "point: {azimuth-deg: " + followed.get("azimuthDeg")
                + ", altitude-deg: " + followed.get("altitudeDeg") + "}, moon: in-frame");
        assertTrue(window.isObject(), window.toString());
        assertEquals(tone(window, window.get("azimuthDeg").doubleValue() + 15),
                window.get("skyToneStops").doubleValue(), 0.5);
    }

    /** English usage: the Moon, but Jupiter. */
    @Test
    void bodiesAreNamedAsSentencesNameThem() {
        String trail = "trail --trip demo-data/trip.yaml --lasts 1h --azimuth ";
        assertTrue(Run.printed(trail + "208 --altitude 74 --from 2027-02-16T21:30")
                .contains("; so will the Moon."));
        assertTrue(Run.printed(trail + "103 --altitude 37 --from 2027-02-08T21:30")
                .contains("; so will Mars and Jupiter."));
    }

    private static double tone(JsonNode window, double azimuthDeg) {
        return Run.json("expose --place 41.05,-2.15,1080 --zone Europe/Madrid --film instant-mono-640"
                + " --focal-length 75 --f-number " + window.get("fNumber").asString()
                + " --azimuth " + azimuthDeg
                + " --altitude " + window.get("altitudeDeg").asString() + " --from "
                + window.get("openAt").asString() + " --lasts " + window.get("correctedS").asString()
                + "s").at("/exposures/0/skyToneStops").doubleValue();
    }
}
