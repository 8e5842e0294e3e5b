package gloam.view;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.temporal.ChronoField;
import java.util.Locale;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.SerializableString;
import tools.jackson.core.io.CharacterEscapes;
import tools.jackson.core.io.SerializedString;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.StdSerializer;

/** JSON: records as objects, their components in order; what has no value is null. */
final class JsonRenderer implements Renderer {

    private static final ObjectWriter WRITER = writer();

    /** What a file holds: the name of the contract, then the report's components. */
    private record Document(String schema, @JsonUnwrapped Report report) {
    }

    @Override
    public void render(Report report, Appendable out) throws IOException {
        out.append(WRITER.writeValueAsString(new Document(Report.SCHEMA, report))).append('\n');
    }

    private static ObjectWriter writer() {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        return JsonMapper.builder(JsonFactory.builder().characterEscapes(new SteeringEscapes()).build())
                .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
                .disable(SerializationFeature.WRAP_EXCEPTIONS)
                .addModule(new SimpleModule().addSerializer(new Moment()).setSerializerModifier(new CutNumbers()))
                .build().writer().with(new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter));
    }

    /** A moment with its tenth of a second, or as many places as it needs, and its offset from UTC. */
    private static final class Moment extends StdSerializer<OffsetDateTime> {

        private static final DateTimeFormatter FORM = new DateTimeFormatterBuilder()
                .appendPattern("uuuu-MM-dd'T'HH:mm:ss").appendFraction(ChronoField.NANO_OF_SECOND, 1, 3, true)
                .appendPattern("XXX").toFormatter(Locale.ROOT);

        Moment() {
            super(OffsetDateTime.class);
        }

        @Override
        public void serialize(OffsetDateTime at, JsonGenerator json, SerializationContext context) {
            json.writeString(FORM.format(at));
        }
    }

    /** Writes as escapes what would steer a terminal: controls, line separators and what turns the direction of text. */
    private static final class SteeringEscapes extends CharacterEscapes {

        private static final long serialVersionUID = 1;
        private static final int DELETE = 0x7f;

        @Override
        public int[] getEscapeCodesForAscii() {
            int[] codes = standardAsciiEscapesForJSON();
            codes[DELETE] = ESCAPE_STANDARD;
            return codes;
        }

        @Override
        public SerializableString getEscapeSequence(int c) {
            boolean steers = c > DELETE && c <= 0x9f || c >= 0x2028 && c <= 0x202e || c >= 0x2066 && c <= 0x2069;
            return steers ? new SerializedString(String.format(Locale.ROOT, "\\u%04x", c)) : null;
        }
    }
}
