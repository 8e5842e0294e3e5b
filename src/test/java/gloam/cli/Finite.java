package gloam.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Runs whose every number must be one. */
final class Finite {

    private static final Pattern NO_NUMBER = Pattern.compile("Infinity|NaN|(?<!\" : )\\bnull\\b|∞");
    private static final JsonMapper STRICT = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS).build();

    private Finite() {
    }

    static List<String> with(List<String> args, String command, String... more) {
        List<String> all = new ArrayList<>(List.of(command));
        all.addAll(args);
        all.addAll(List.of(more));
        return all;
    }

    /** What a run says as JSON; empty where it refuses. */
    static Optional<JsonNode> json(List<String> args) throws JacksonException {
        List<String> all = new ArrayList<>(args);
        all.addAll(List.of("--format", "json"));
        String out = checked(all);
        return out.isEmpty() ? Optional.empty() : Optional.of(STRICT.readTree(out));
    }

    static String checked(List<String> args) {
        Run run = Run.of(args);
        assertTrue(run.exit() == 0 || run.exit() == 2, () -> args + "\nexit " + run.exit() + "\n"
                + run.err());
        assertFalse(NO_NUMBER.matcher(run.out() + run.err()).find(), () -> args + "\n" + run.out()
                + run.err());
        return run.out();
    }

    static void assertSays(List<String> args, String words) {
        String out = checked(args);
        assertTrue(out.replaceAll("\\s+", " ").contains(words), out);
    }
}
