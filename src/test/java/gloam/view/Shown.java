package gloam.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * What a report shows to programs, asked by what its properties mean: by words that are in the name of one
 * property alone.
 *
 * @param node a part of its JSON
 */
record Shown(JsonNode node) {

    static Shown of(Report report) throws IOException {
        StringBuilder text = new StringBuilder();
        new JsonRenderer().render(report, text);
        return new Shown(new ObjectMapper().readTree(text.toString()));
    }

    /** The one property whose name has all the words. */
    Shown at(String... words) {
        List<String> names = node.properties().stream().map(field -> field.getKey())
                .filter(name -> Stream.of(words).allMatch(name.toLowerCase(Locale.ROOT)::contains)).toList();
        assertEquals(1, names.size(), () -> String.join(" ", words) + " of " + node);
        return new Shown(node.get(names.get(0)));
    }

    /** The property of that very name. */
    Shown named(String name) {
        return new Shown(node.required(name));
    }

    List<Shown> list(String... words) {
        List<Shown> list = new ArrayList<>();
        at(words).node.forEach(item -> list.add(new Shown(item)));
        return list;
    }

    double number(String... words) {
        return at(words).node.asDouble();
    }

    String text(String... words) {
        return at(words).node.asString();
    }

    boolean empty(String... words) {
        return at(words).node.isNull();
    }

    Instant instant(String... words) {
        return time(words).toInstant();
    }

    OffsetDateTime time(String... words) {
        return OffsetDateTime.parse(text(words));
    }
}
