package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** A sheet on which nothing would show is never planned. */
class BlankSheetTest {

    @TempDir
    private Path folder;

    /**
     * A pinhole under a dark sky leaves film as it was; the stars that f/22 and f/16 show move slower and
     * faster.
     */
    @ParameterizedTest
    @CsvSource({"'pole: {}, exposure-min: {shortest: 60, longest: 240}', 22",
        "'point: {azimuth-deg: 180, altitude-deg: 46}, exposure-min: {shortest: 30, longest: 120}', 16"})
    void blackSheetsAreRefusedWithWhatTheyTake(String wish, int widerFNumber) throws IOException {
        Path trip = trip("negative-classic-100", "[200, 250]", wish + ", sky: dark, tone-at-most-stops: -1");
        JsonNode night = Run.json("plan --trip " + trip).at("/nights/0");
        assertEquals(0, night.get("windows").size(), night.toString());
        String reason = night.at("/refused/0/reason").asString();
        assertTrue(reason.startsWith("nothing would show: no star leaves a trail and the sky stays black"),
                reason);
        assertTrue(reason.contains("it takes f/" + widerFNumber + " or wider"), reason);
        assertEquals(0, Run.json("nights --trip " + trip).at("/nights/0/score").asDouble());
    }

    @Test
    void starsOnABlackSkyAreAPicture() throws IOException {
        Path trip = trip("negative-classic-100", "[5.6, 8]",
                "pole: {}, exposure-min: {shortest: 60, longest: 240}, sky: dark, tone-at-most-stops: -1");
        assertEquals(1, Run.json("plan --trip " + trip).at("/nights/0/windows").size());
        assertEquals(0.5, Run.json("nights --trip " + trip).at("/nights/0/score").asDouble(),
                "the chance of a clear sky without a forecast");
    }

    /** With any sky and any tone the pole's wheel was opened at sunset, fourteen stops too light. */
    @Test
    void whiteSheetsAreNotPlanned() throws IOException {
        Path trip = trip("instant-mono-640", "[5.6, 8, 11]",
                "pole: {}, exposure-min: {shortest: 20, longest: 60}, sky: any");
        JsonNode window = Run.json("plan --trip " + trip).at("/nights/0/windows/0");
        assertTrue(window.get("recordedStars").asInt() > 0, window.toString());
    }

    @Test
    void whiteSheetsAreRefusedWithWhatTheyTake() throws IOException {
        Path trip = trip("instant-mono-640", "[5.6, 8, 11]",
                "pole: {}, exposure-min: {shortest: 20, longest: 60}, sky: any, "
                + "time-of-night: {from: \"21:25\", to: \"22:00\"}");
        JsonNode night = Run.json("plan --trip " + trip).at("/nights/0");
        assertEquals(0, night.get("windows").size(), night.toString());
        String reason = night.at("/refused/0/reason").asString();
        assertTrue(reason.startsWith("nothing would show: no star leaves a trail and the sky stays white"),
                reason);
        assertTrue(reason.matches(".* tone \\+\\d+\\.\\d at f/5\\.6 in 20 min, while a tone shows from "
                + "\\+2\\.1 down; it takes another light \\(gloam trail .*"), reason);
    }

    private Path trip(String film, String fNumbers, String wish) throws IOException {
        return Files.writeString(folder.resolve("trip.yaml"), """
                title: Box
                sites:
                  - {name: Plateau, latitude-deg: 44.2, longitude-deg: 3.58, height-m: 980, zone: Europe/Paris}
                nights: {from: 2027-06-03, to: 2027-06-03}
                camera: {name: Box, focal-length-mm: 40, frame-mm: {width: 101.6, height: 127}, f-numbers: %s,
                         transmittance: 1, changeover-min: 5}
                film: %s
                sheets: 2
                wishes: [{name: Wheel, %s}]
                """.formatted(fNumbers, film, wish));
    }
}
