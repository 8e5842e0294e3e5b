package gloam.view;

import java.util.List;
import java.util.OptionalDouble;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.BeanDescription;
import tools.jackson.databind.JavaType;
import tools.jackson.databind.SerializationConfig;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ser.BeanPropertyWriter;
import tools.jackson.databind.ser.ValueSerializerModifier;
import tools.jackson.databind.ser.std.StdSerializer;

/** Makes every number of a report be written as {@link Accuracy} says for its name. */
final class CutNumbers extends ValueSerializerModifier {

    private static final long serialVersionUID = 1;

    @Override
    public List<BeanPropertyWriter> changeProperties(SerializationConfig config, BeanDescription.Supplier record,
                                                     List<BeanPropertyWriter> properties) {
        for (BeanPropertyWriter property : properties) {
            if (isNumber(property.getType())) {
                property.assignSerializer(new CutNumber(Accuracy.of(property.getName())));
            }
        }
        return properties;
    }

    private static boolean isNumber(JavaType type) {
        return type.hasRawClass(double.class) || type.hasRawClass(Double.class) || type.hasRawClass(OptionalDouble.class)
                || type.isContainerType() && isNumber(type.getContentType());
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
}
