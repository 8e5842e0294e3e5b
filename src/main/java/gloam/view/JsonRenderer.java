package gloam.view;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.io.IOException;
import java.util.Locale;
import tools.jackson.core.SerializableString;
import tools.jackson.core.io.CharacterEscapes;
import tools.jackson.core.io.SerializedString;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** JSON: records as objects, their components in order; what has no value is null. */
final class JsonRenderer implements Renderer {

    private static final ObjectWriter WRITER = writer();

    /** What a file holds: the name of the contract, then the report's components. */
    private record Document(String schema, @JsonUnwrapped Report report) {
    }

    @Override
    public void render(Report report, Appendable out) throws IOException {
        out.append(WRITER.withAttribute(CutValues.ZONE, report.zone())
                .writeValueAsString(new Document(Report.SCHEMA, report))).append('\n');
    }

    /** What makes JSON of reports. */
    static JsonMapper mapper() {
        return JsonMapper.builder(JsonFactory.builder().characterEscapes(new SteeringEscapes()).build())
                .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
                .disable(SerializationFeature.WRAP_EXCEPTIONS)
                .addModule(CutValues.module()).build();
    }

    private static ObjectWriter writer() {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        return mapper().writer().with(new DefaultPrettyPrinter().withObjectIndenter(indenter)
                .withArrayIndenter(indenter));
    }

    /**
     * Writes as escapes what would steer a terminal: controls, line separators and what turns the direction
     * of text.
     */
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
            boolean steers = c > DELETE && c <= 0x9f || c >= 0x2028 && c <= 0x202e || c >= 0x2066
                    && c <= 0x2069;
            return steers ? new SerializedString(String.format(Locale.ROOT, "\\u%04x", c)) : null;
        }
    }
}
