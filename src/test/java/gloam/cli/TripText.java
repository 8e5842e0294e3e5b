package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** A trip file whose text tests change, and what commands make of it. */
record TripText(String text, Path folder) {

    /** The trip with some of its text, which is there, replaced. */
    TripText with(String was, String then) {
        assertTrue(text.contains(was), was);
        return new TripText(text.replace(was, then), folder);
    }

    Run run(String... words) throws IOException {
        Path trip = Files.writeString(folder.resolve("trip.yaml"), text);
        List<String> args = new ArrayList<>(List.of(words));
        args.addAll(1, List.of("--trip", trip.toString()));
        return Run.of(args);
    }

    /** What {@code check} says is wrong. */
    String fault() throws IOException {
        return run("check").err();
    }

    String checked() throws IOException {
        return run("check").out().replaceAll("\\s+", " ");
    }

    List<JsonNode> nights() throws IOException {
        return all(new ObjectMapper().readTree(run("plan", "--format", "json").out()).get("nights"));
    }

    /** The windows of all nights in order. */
    List<JsonNode> windows() throws IOException {
        return nights().stream().flatMap(night -> all(night.get("windows")).stream()).toList();
    }

    /** Why the first wish is refused on the first night. */
    String refusal() throws IOException {
        return nights().get(0).get("refused").get(0).get("reason").stringValue();
    }

    private static List<JsonNode> all(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false).toList();
    }
}
