package gloam.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {

    private static final List<String> KEYS = List.of("name", "latitude-deg", "longitude-deg", "height-m",
            "zone");

    /**
     * Distances counted by hand; the first is the standard example of edit distance, common practice, no
     * source.
     */
    @ParameterizedTest
    @CsvSource({"kitten, sitting, 3", "zone, zoen, 1", "'', abc, 3", "same, same, 0", "ca, abc, 3"})
    void slipsAreCounted(String from, String to, int slips) {
        assertEquals(slips, Nearest.distance(from, to));
        assertEquals(slips, Nearest.distance(to, from));
    }

    @ParameterizedTest
    @CsvSource({"lattitude-deg, latitude-deg", "latitude, latitude-deg", "LATITUDE-DEG, latitude-deg",
            "zoen, zone",
        "lat, latitude-deg", "naem, name"})
    void nearWordsAreOffered(String word, String meant) {
        assertEquals(Optional.of(meant), Nearest.to(word, KEYS));
    }

    @Test
    void farWordsAreNot() {
        assertEquals(Optional.empty(), Nearest.to("colour", KEYS));
        assertEquals(Optional.empty(), Nearest.to("", KEYS));
        assertEquals(Optional.empty(), Nearest.to("name".repeat(100), KEYS));
        assertEquals("Known here: name, latitude-deg, longitude-deg, height-m, zone.",
                Nearest.hint("colour", KEYS));
    }
}
