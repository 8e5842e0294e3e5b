package gloam.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The list of the trip file's keys is that of the code that reads the file. */
class TripKeysTest {

    private static final Path READERS = Path.of("src/main/java/gloam/store");
    /** A key where a reader asks for it. */
    private static final Pattern ASKED =
            Pattern.compile("(?:fields\\.(?:<[^>]*>)?(?:required|deciding|optional|orDefault|"
            + "orElse|numberOr|number)\\(|Choice<>\\(|between\\(fields, )\\s*\"([a-z0-9-]+)\"");
    private static final List<TripKey> KEYS = TripKeys.all();

    @Test
    void everyKeySaysWhatItMeansAndWhatItTakes() {
        for (TripKey key : KEYS) {
            assertTrue(key.meaning().matches("[A-Z].*[.)}l]"), "needs a description: " + key);
            assertFalse(key.kind().isEmpty(), "is read in no trip of the list: " + key);
            assertTrue(!key.example().isEmpty() || key.kind().matches("section|list .*|.*, or section"),
                    "needs an example: " + key);
        }
    }

    @Test
    void noPathTwice() {
        assertEquals(KEYS.size(), KEYS.stream().map(TripKey::path).distinct().count());
    }

    /** What the sources of the readers ask for is in the list, also where no trip of the list leads to it. */
    @Test
    void everyKeyThatTheSourcesNameIsListed() throws IOException {
        Set<String> asked = new TreeSet<>();
        try (Stream<Path> sources = Files.list(READERS)) {
            for (Path source : sources.filter(file -> file.toString().matches(".*(Section|TripFile)\\.java"))
                    .toList()) {
                Matcher matcher = ASKED.matcher(Files.readString(source));
                while (matcher.find()) {
                    asked.add(matcher.group(1));
                }
            }
        }
        assertTrue(asked.size() > 80, asked.toString());
        asked.removeAll(KEYS.stream().map(TripKey::name).collect(Collectors.toSet()));
        assertEquals(Set.of(), asked);
    }

    /** The words that decide which other keys there are all occur in the trips of the list. */
    @Test
    void everyLawIsRead() {
        String trips = Input.inside("/gloam/store/trip-keys.yaml").text();
        TripKey model = key("film.reciprocity.model");
        for (String word : model.kind().split(", | or ")) {
            assertTrue(trips.contains("model: " + word), word);
        }
    }

    /** Ranges as the records state them, defaults as the readers do. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "sites[].latitude-deg|degrees, -90 … 90|required",
        "sites[].extinction-mag|magnitudes, 0 … 2|default that of clear air at this height",
        "camera.f-numbers|list of 1 … 60, each 0.7 … 512|one of f-numbers or pinhole-mm is required",
        "camera.focus-m|metres, 0.1 and more|default infinity",
        "camera.projection|rectilinear, equidistant or equisolid|default rectilinear",
        "wishes[].point|section|one of point, follow or pole is required",
        "wishes[].exposure-min.shortest|minutes, 0.0166667 … 1440|default 1",
        "wishes[].twilight-percent.most|percent, 0 … 100|''",
        "wishes[].repeat|whole number, 1 … 100|default 1, or 3 with bracket-stops",
        "wishes[].time-of-night.from|time of day|required",
        "film.reciprocity.points[].metered-s|seconds, 0.000001 … 10000000|required",
        "nights.from|date|required"})
    void rangesAndDefaultsAreThoseOfTheReaders(String path, String kind, String without) {
        assertEquals(kind, key(path).kind());
        assertEquals(without, key(path).without());
    }

    @Test
    void keysOfASectionStandTogether() {
        List<String> tops = KEYS.stream().map(key -> key.path().replaceFirst("[.\\[].*", "")).toList();
        Map<String, Long> count = tops.stream()
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        count.forEach((top, all) -> assertEquals(all, tops.lastIndexOf(top) - tops.indexOf(top) + 1, top));
        assertEquals(List.of("title", "sites", "nights", "evenings", "awake", "travel-min", "travel",
                "camera", "cameras", "film", "sheets", "sheets-per-night", "journal", "batch", "preview",
                "forecast",
                "least-clear-percent", "clear-prior-percent", "wishes"), tops.stream().distinct().toList());
    }

    private static TripKey key(String path) {
        return KEYS.stream().filter(key -> key.path().equals(path)).findFirst().orElseThrow(() ->
                new AssertionError(path + " is not listed"));
    }
}
