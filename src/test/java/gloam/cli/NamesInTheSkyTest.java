package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a word means in the sky it means wherever it is said: options of three commands, and a trip's {@code
 * follow}.
 */
class NamesInTheSkyTest {

    private static final String SITE = "--place 41.05,-2.15,1080 --zone Europe/Madrid";
    private static final String SHEET = SITE + " --focal-length 120 --frame 80x80 --iso 100 --f-number 8"
            + " --from 2027-02-08T21:00 --lasts 30min";

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"Orion", "ori", "83.6,-5.4", "Mars", "Rigel", "α Leo", "HIP 24436",
            "galactic-centre"})
    void oneWordMeansTheSameEverywhere(String word) throws IOException {
        assertEquals(0, asked("sky " + SITE + " --from 2027-02-08 --to 2027-02-09 --altitude 1 --above", word)
                .exit());
        assertEquals(0, asked("trail " + SHEET + " --aim", word).exit());
        assertEquals(0, asked("proof --size 40 " + SHEET + " --aim", word).exit());
        assertEquals(0, checked(word).exit());
    }

    @ParameterizedTest
    @ValueSource(strings = {"Orionn", "Rigell", "galactic-center"})
    void aSlipIsAskedBackEverywhere(String word) throws IOException {
        String meant = word.equals("Orionn") ? "Orion" : word.equals("Rigell") ? "Rigel" : "galactic-centre";
        for (Run run : new Run[] {asked("sky " + SITE + " --from 2027-02-08 --altitude 1 --above", word),
            asked("trail " + SHEET + " --aim", word), asked("proof " + SHEET + " --aim", word),
            checked(word)}) {
            assertEquals(2, run.exit());
            assertTrue((run.err() + run.out())
                    .contains("nothing in the sky is named \"" + word + "\"; did you mean "
                    + meant + "?"), run.err() + run.out());
        }
    }

    private static Run asked(String line, String word) {
        String[] words = (line + " ?").split(" ");
        words[words.length - 1] = word;
        return Run.of(words);
    }

    private Run checked(String word) throws IOException {
        Path trip = folder.resolve("trip.yaml");
        Files.writeString(trip, """
                title: One night
                sites: [{name: Loma, latitude-deg: 41.05, longitude-deg: -2.15, height-m: 1080, zone: Europe/Madrid}]
                nights: {from: 2027-02-08, to: 2027-02-08}
                camera: {name: Box, focal-length-mm: 120, frame-mm: {width: 80, height: 80}, f-numbers: [8]}
                film: instant-mono-640
                sheets: 1
                wishes: [{name: w, follow: {star: "%s"}, sky: any, exposure-min: {shortest: 30, longest: 60}}]
                """.replace("%s", word));
        return Run.of("check", "--trip", trip.toString());
    }
}
