package gloam.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.temporal.ChronoField;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** JSON: records as objects, their components in order; what is empty is left out, or null where promised. */
final class JsonRenderer implements Renderer {

    private static final DateTimeFormatter MOMENT = new DateTimeFormatterBuilder()
            .appendPattern("uuuu-MM-dd'T'HH:mm:ss").appendFraction(ChronoField.NANO_OF_SECOND, 1, 3, true)
            .appendPattern("XXX").toFormatter(Locale.ROOT);

    private static final int MOST_DECIMALS = 8;

    /** Controls, line separators and what turns the direction of text. */
    private static final Pattern STEERING = Pattern.compile("[\\x7f-\\x9f\\u2028-\\u202e\\u2066-\\u2069]");

    private static final JsonFactory FACTORY = new JsonFactory();

    @Override
    public void render(Report report, Appendable out) throws IOException {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
            json.setPrettyPrinter(new DefaultPrettyPrinter()
                    .withObjectIndenter(indenter).withArrayIndenter(indenter));
            json.writeStartObject();
            json.writeStringField("schema", Report.SCHEMA);
            writeComponents(json, report.figures());
            json.writeEndObject();
        }
        out.append(escaped(text.toString())).append('\n');
    }

    /** Characters that would steer a terminal, which can stand only within strings, written as escapes. */
    private static String escaped(String json) {
        return STEERING.matcher(json).replaceAll(found -> String.format(Locale.ROOT, "\\\\u%04x", (int) found.group().charAt(0)));
    }

    private static void writeComponents(JsonGenerator json, Record parent) throws IOException {
        for (RecordComponent component : parent.getClass().getRecordComponents()) {
            Optional<?> value = present(valueOf(component, parent));
            if (value.isPresent()) {
                json.writeFieldName(component.getName());
                write(json, value.get());
            } else if (component.isAnnotationPresent(Promised.class)) {
                json.writeNullField(component.getName());
            }
        }
    }

    private static void write(JsonGenerator json, Object value) throws IOException {
        if (value instanceof Record child) {
            json.writeStartObject();
            writeComponents(json, child);
            json.writeEndObject();
        } else if (value instanceof List<?> list) {
            json.writeStartArray();
            for (Object element : list) {
                write(json, element);
            }
            json.writeEndArray();
        } else if (value instanceof Double number) {
            writeNumber(json, number);
        } else if (value instanceof Integer number) {
            json.writeNumber(number);
        } else if (value instanceof Boolean flag) {
            json.writeBoolean(flag);
        } else if (value instanceof OffsetDateTime moment) {
            json.writeString(MOMENT.format(moment));
        } else if (value instanceof String || value instanceof LocalDate) {
            json.writeString(value.toString());
        } else {
            throw new IllegalStateException("no JSON form for " + value.getClass());
        }
    }

    private static void writeNumber(JsonGenerator json, double number) throws IOException {
        if (!Double.isFinite(number)) {
            throw new IllegalStateException("not a finite number in a report: " + number);
        }
        json.writeNumber(plain(BigDecimal.valueOf(number).stripTrailingZeros()));
    }

    /** Without an exponent as far as that reads well. */
    private static String plain(BigDecimal number) {
        return number.scale() <= MOST_DECIMALS ? number.toPlainString() : number.toString();
    }

    /** The value inside, or nothing where there is none. */
    private static Optional<?> present(Object value) {
        if (value instanceof Optional<?> optional) {
            return optional;
        }
        if (value instanceof OptionalDouble optional) {
            return optional.isPresent() ? Optional.of(optional.getAsDouble()) : Optional.empty();
        }
        return Optional.of(value);
    }

    private static Object valueOf(RecordComponent component, Record parent) {
        try {
            return component.getAccessor().invoke(parent);
        } catch (ReflectiveOperationException cannotHappen) {
            throw new IllegalStateException(cannotHappen);
        }
    }
}
