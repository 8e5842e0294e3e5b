package gloam.view;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.temporal.ChronoField;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.BeanDescription;
import tools.jackson.databind.JavaType;
import tools.jackson.databind.SerializationConfig;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ser.BeanPropertyWriter;
import tools.jackson.databind.ser.ValueSerializerModifier;
import tools.jackson.databind.ser.std.StdSerializer;

/** Makes every number and moment of a report be written as {@link Accuracy} says for its name. */
final class CutValues extends ValueSerializerModifier {

    private static final long serialVersionUID = 1;

    @Override
    public List<BeanPropertyWriter> changeProperties(SerializationConfig config, BeanDescription.Supplier record,
                                                     List<BeanPropertyWriter> properties) {
        for (BeanPropertyWriter property : properties) {
            JavaType type = property.getType();
            if (is(type, double.class) || is(type, Double.class) || is(type, OptionalDouble.class)) {
                property.assignSerializer(new CutNumber(Accuracy.of(property.getName())));
            } else if (is(type, OffsetDateTime.class)) {
                String name = Accuracy.name(record.getBeanClass());
                property.assignSerializer(new CutMoment(Accuracy.of(name, property.getName())));
            }
        }
        return properties;
    }

    /** Whether it is of a class, may be, or is a list of such. */
    private static boolean is(JavaType type, Class<?> wanted) {
        return type.hasRawClass(wanted)
                || (type.isContainerType() || type.isReferenceType()) && is(type.getContentType(), wanted);
    }

    /** Numbers cut one way: one, one that may be missing, or a list. */
    private static final class CutNumber extends StdSerializer<Object> {

        private final Accuracy.Cut cut;

        CutNumber(Accuracy.Cut cut) {
            super(Object.class);
            this.cut = cut;
        }

        @Override
        public void serialize(Object value, JsonGenerator json, SerializationContext context) {
            if (value instanceof OptionalDouble number && number.isEmpty()) {
                json.writeNull();
            } else if (value instanceof List<?> numbers) {
                json.writeStartArray();
                numbers.forEach(number -> serialize(number, json, context));
                json.writeEndArray();
            } else {
                json.writeNumber(cut.text(value instanceof OptionalDouble number ? number.getAsDouble() : (Double) value));
            }
        }
    }

    /** Moments cut one way, with a tenth of a second or as many places as they need, and their offset from UTC. */
    private static final class CutMoment extends StdSerializer<Object> {

        private static final DateTimeFormatter FORM = new DateTimeFormatterBuilder()
                .appendPattern("uuuu-MM-dd'T'HH:mm:ss").appendFraction(ChronoField.NANO_OF_SECOND, 1, 3, true)
                .appendPattern("XXX").toFormatter(Locale.ROOT);

        private final Accuracy.Step step;

        CutMoment(Accuracy.Step step) {
            super(Object.class);
            this.step = step;
        }

        @Override
        public void serialize(Object value, JsonGenerator json, SerializationContext context) {
            Object at = value instanceof Optional<?> some ? some.orElse(null) : value;
            if (at == null) {
                json.writeNull();
            } else {
                json.writeString(FORM.format(step.of((OffsetDateTime) at)));
            }
        }
    }
}
