package gloam.store;

import gloam.units.BadInput;
import gloam.units.Label;
import gloam.units.Nearest;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonPointer;
import tools.jackson.core.JsonToken;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.exc.MismatchedInputException;
import tools.jackson.databind.exc.UnrecognizedPropertyException;
import tools.jackson.databind.json.JsonMapper;

/**
 * Why a text could not be bound to a record, in Gloam's words and at its place.
 *
 * <p>Jackson gives no place of a record's unknown key, and of a record that refuses the place where it ends,
 * but of both the path of keys; the place is looked up by that path.
 *
 * @param text   the text
 * @param wrong  what Jackson made of it
 * @param mapper what reads it
 */
record Misfit(Tree.Text text, JacksonException wrong, JsonMapper mapper) {

    private static final Map<Class<?>, String> WORDS = Map.of(
            int.class, "a whole number", double.class, "a number", Double.class, "a number",
            BigDecimal.class, "a number", Boolean.class, "true or false", String.class, "text",
            Instant.class, "an instant such as 2027-02-08T20:35:00Z",
            OffsetDateTime.class, "a moment such as 2027-02-08T21:35:00+01:00",
            ZoneId.class, "a time zone such as Europe/Madrid");

    /** The problem. */
    Problem problem() {
        if (!(wrong instanceof DatabindException)) {
            return new Problem(text.at(wrong.getLocation()), "not JSON: " + firstLine());
        }
        if (text.content().isBlank()) {
            return new Problem(text.at(1, 1), "the file is empty");
        }
        int steps = wrong.getPath().size();
        Optional<Spot> spot = spot(pointer(steps));
        if (spot.isEmpty() && steps > 0) {
            return problem(spot(pointer(steps - 1)).orElse(start()),
                    "is missing. Add the key " + wrong.getPath().get(steps - 1).getPropertyName() + ".");
        }
        return problem(spot.orElse(start()), why(spot.orElse(start())));
    }

    private String why(Spot spot) {
        if (wrong instanceof UnrecognizedPropertyException unknown) {
            return "unknown key. " + Nearest.hint(unknown.getPropertyName(),
                    unknown.getKnownPropertyIds().stream().map(String::valueOf).toList());
        }
        for (Throwable cause = wrong; cause != null; cause = cause.getCause()) {
            if (cause instanceof BadInput refused) {
                return refused.getMessage();
            }
        }
        Class<?> type = wrong instanceof MismatchedInputException mismatch ? mismatch.getTargetType()
                : Object.class;
        List<String> words = type.isEnum()
                ? Arrays.stream(type.getEnumConstants()).map(word -> Label.of((Enum<?>) word)).toList()
                : List.of();
        Optional<String> meant = Nearest.to(spot.found.replace("\"", ""), words);
        return "expected " + (words.isEmpty() ? words(type) : Shown.oneOf(words))
                + ", found " + spot.found + meant.map(word -> ". Did you mean " + word + "?").orElse("");
    }

    private static String words(Class<?> type) {
        return WORDS.getOrDefault(type, Collection.class.isAssignableFrom(type) ? "a list"
                : "a section of keys");
    }

    private String firstLine() {
        return Shown.plain(wrong.getOriginalMessage().lines().findFirst().orElse("cannot be read"));
    }

    private Problem problem(Spot spot, String what) {
        return new Problem(new Where(spot.where.file(), spot.where.line(), spot.where.column(), path()),
                what);
    }

    private String path() {
        StringBuilder path = new StringBuilder();
        for (JacksonException.Reference step : wrong.getPath()) {
            path.append(step.getPropertyName() == null ? "[" + step.getIndex() + "]"
                    : (path.isEmpty() ? "" : ".") + Shown.plain(step.getPropertyName()));
        }
        return path.toString();
    }

    private JsonPointer pointer(int steps) {
        JsonPointer pointer = JsonPointer.empty();
        for (JacksonException.Reference step : wrong.getPath().subList(0, steps)) {
            pointer = step.getPropertyName() == null ? pointer.appendIndex(step.getIndex())
                    : pointer.appendProperty(step.getPropertyName());
        }
        return pointer;
    }

    /** The value at a path, or the key where that is unknown; empty where there is none. */
    private Optional<Spot> spot(JsonPointer pointer) {
        boolean key = wrong instanceof UnrecognizedPropertyException;
        try (JsonParser parser = mapper.createParser(text.content())) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if ((token == JsonToken.PROPERTY_NAME) == key && !token.isStructEnd()
                        && parser.streamReadContext().pathAsPointer().equals(pointer)) {
                    return Optional.of(new Spot(text.at(parser.currentTokenLocation()), found(parser)));
                }
            }
        } catch (JacksonException brokenBeyond) {
            return Optional.empty();
        }
        return Optional.empty();
    }

    private Spot start() {
        return new Spot(text.at(1, 1), "nothing");
    }

    private static String found(JsonParser parser) {
        return switch (parser.currentToken()) {
            case START_OBJECT -> "a section of keys";
            case START_ARRAY -> "a list";
            case VALUE_NULL -> "nothing. Write a value.";
            default -> Shown.quoted(parser.getString());
        };
    }

    /** A place and what is found there, in words. */
    private record Spot(Where where, String found) {
    }
}
