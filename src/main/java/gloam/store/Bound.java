package gloam.store;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import gloam.units.BadInput;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.EnumNamingStrategies;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.ObjectReader;
import tools.jackson.databind.cfg.EnumFeature;
import tools.jackson.databind.cfg.MapperConfig;
import tools.jackson.databind.deser.std.StdDeserializer;
import tools.jackson.databind.introspect.AnnotatedMember;
import tools.jackson.databind.introspect.JacksonAnnotationIntrospector;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.node.ObjectNode;

/**
 * Binds the JSON that Gloam keeps for itself to records, and writes it.
 *
 * <p>Nothing is guessed: an unknown key, a value of another kind, a key that is missing or given twice and
 * whatever a record refuses end the reading. No input names a type.
 */
final class Bound {

    private static final int MOST_TEXT = 500;
    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(Tree.LIMITS).enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS, MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
            .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT,
            DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES,
            DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(EnumFeature.FAIL_ON_NUMBERS_FOR_ENUMS)
            .changeDefaultPropertyInclusion(all -> all.withValueInclusion(JsonInclude.Include.NON_ABSENT))
            .changeDefaultNullHandling(nulls -> nulls.withContentNulls(Nulls.FAIL))
            .annotationIntrospector(new OnlyOptionalsMayBeMissing())
            .enumNamingStrategy(EnumNamingStrategies.KEBAB_CASE)
            .addModule(new SimpleModule()
                    .addDeserializer(String.class, new FromText<>(String.class, String::strip))
                    .addDeserializer(Instant.class, new FromText<>(Instant.class, Instant::parse))
                    .addDeserializer(OffsetDateTime.class,
                    new FromText<>(OffsetDateTime.class, OffsetDateTime::parse))
                    .addDeserializer(ZoneId.class, new FromText<>(ZoneId.class, ZoneId::of)))
            .build();

    private Bound() {
    }

    /**
     * The record in a text.
     *
     * @throws BadInput with the place of the first thing that is wrong
     */
    static <T extends Record> T read(Tree.Text text, Class<T> type) {
        return read(text, MAPPER.readerFor(type));
    }

    /** The same of a text by a newer Gloam: keys that are not known are passed over. */
    static <T extends Record> T readNewer(Tree.Text text, Class<T> type) {
        return read(text, MAPPER.readerFor(type).without(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES));
    }

    private static <T extends Record> T read(Tree.Text text, ObjectReader reader) {
        try (JsonParser parser = MAPPER.createParser(text.content())) {
            T record = reader.readValue(parser);
            if (parser.nextToken() != null) {
                throw new BadInput(text.at(parser.currentTokenLocation())
                        + ": a second value begins here. Keep one.");
            }
            return record;
        } catch (JacksonException wrong) {
            throw new BadInput(new Misfit(text, wrong, MAPPER).problem().toString());
        }
    }

    /** The keys and values of a record. */
    static ObjectNode keys(Record record) {
        return (ObjectNode) MAPPER.readTree(line(record));
    }

    /** A record as JSON in one line, what is absent left out. */
    static String line(Record record) {
        return MAPPER.writeValueAsString(record);
    }

    /** A component of a record is required unless its type, or what stands for nothing, says otherwise. */
    private static final class OnlyOptionalsMayBeMissing extends JacksonAnnotationIntrospector {

        private static final long serialVersionUID = 1;

        @Override
        public Boolean hasRequiredMarker(MapperConfig<?> config, AnnotatedMember component) {
            return component.getRawType() != Optional.class && component.getRawType() != OptionalDouble.class
                    && !component.hasAnnotation(JsonSetter.class);
        }
    }

    /** What is made of a text, which is short. */
    private static final class FromText<T> extends StdDeserializer<T> {

        private final transient Function<String, T> reader;

        FromText(Class<T> type, Function<String, T> reader) {
            super(type);
            this.reader = reader;
        }

        @Override
        @SuppressWarnings("unchecked")
        public T deserialize(JsonParser parser, DeserializationContext context) {
            if (!parser.hasToken(JsonToken.VALUE_STRING)) {
                return (T) context.handleUnexpectedToken(handledType(), parser);
            }
            String text = parser.getString();
            if (text.isBlank()) {
                return (T) context.handleWeirdStringValue(handledType(), text, "blank");
            }
            if (text.length() > MOST_TEXT) {
                throw new BadInput("text of " + text.length() + " characters; at most " + MOST_TEXT
                        + " are read. Shorten it.");
            }
            try {
                return reader.apply(text);
            } catch (DateTimeException unreadable) {
                return (T) context.handleWeirdStringValue(handledType(), text, "unreadable");
            }
        }
    }
}
