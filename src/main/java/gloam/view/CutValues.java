package gloam.view;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import gloam.ephemeris.Appearance;
import gloam.ephemeris.Body;
import gloam.ephemeris.Direction;
import gloam.ephemeris.SkyPosition;
import gloam.gear.FNumber;
import gloam.gear.LightDome;
import gloam.gear.Site;
import gloam.gear.SkyReading;
import gloam.gear.Skyline;
import gloam.journal.Tally;
import gloam.trail.Framing;
import gloam.units.Angle;
import gloam.units.Label;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.temporal.ChronoField;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.BeanDescription;
import tools.jackson.databind.JavaType;
import tools.jackson.databind.SerializationConfig;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.BeanPropertyWriter;
import tools.jackson.databind.ser.ValueSerializerModifier;
import tools.jackson.databind.ser.std.StdSerializer;
import tools.jackson.databind.util.NameTransformer;

/**
 * How the values that answers are made of become JSON: every number and moment as {@link Accuracy} says for
 * its name, an angle in degrees under its name with {@code Deg} behind it, a direction or a point by its
 * parts, an f-number as marked, a moment by the clocks of {@link #ZONE}, a constant by its label.
 */
final class CutValues extends ValueSerializerModifier {

    /** The attribute that names the zone of moments that have none. */
    static final String ZONE = "zone";

    private static final long serialVersionUID = 1;

    /** Values whose parts stand among the properties of the record that has them. */
    private static final Set<Class<?>> PARTS = Set.of(Direction.class, SkyPosition.class,
            Framing.Point.class);

    /** Values of records as JSON. */
    static SimpleModule module() {
        return new SimpleModule().addSerializer(new Constant()).setSerializerModifier(new CutValues())
                .setMixInAnnotation(Site.class, SiteInBrief.class)
                .setMixInAnnotation(Appearance.class, InFull.class)
                .setMixInAnnotation(Tally.class, Keeping.class);
    }

    /** A site without its surroundings. */
    private interface SiteInBrief {

        @JsonIgnore
        Skyline skyline();

        @JsonIgnore
        List<LightDome> lightDomes();

        @JsonIgnore
        List<SkyReading> skyReadings();

        @JsonIgnore
        double zenithSpreadStops();
    }

    /** A body with its name and its diameter. */
    @JsonPropertyOrder({"name", "position", "magnitude", "illuminatedFraction", "phaseAngle",
            "angularDiameter"})
    private interface InFull {

        @JsonProperty("name")
        Body body();

        @JsonIgnore
        Angle semidiameter();

        @JsonProperty("angularDiameter")
        Angle diameter();
    }

    /** A group of sheets by the names of the contract. */
    @JsonPropertyOrder({"name", "sheets", "kept", "undecided", "keptFraction", "spoiledBy"})
    private interface Keeping {

        @JsonProperty("name")
        String group();

        @JsonProperty("keptFraction")
        double keptShare();

        @JsonProperty("spoiledBy")
        List<Tally.Spoiled> spoilers();
    }

    @Override
    public List<BeanPropertyWriter> changeProperties(SerializationConfig config,
            BeanDescription.Supplier record,
                                                     List<BeanPropertyWriter> properties) {
        for (int i = 0; i < properties.size(); i++) {
            BeanPropertyWriter property = properties.get(i);
            JavaType type = property.getType();
            if (is(type, Angle.class)) {
                properties.set(i, property.rename(NameTransformer.simpleTransformer("", "Deg")));
            } else if (PARTS.contains(type.getRawClass())) {
                properties.set(i, property.unwrappingWriter(NameTransformer.NOP));
            }
            cut(record.getBeanClass(), properties.get(i));
        }
        return properties;
    }

    private static void cut(Class<?> record, BeanPropertyWriter property) {
        JavaType type = property.getType();
        if (Stream.of(double.class, Double.class, OptionalDouble.class, Angle.class, FNumber.class)
                .anyMatch(number -> is(type, number))) {
            property.assignSerializer(new CutNumber(Accuracy.of(property.getName())));
        } else if (is(type, OffsetDateTime.class) || is(type, Instant.class)) {
            property.assignSerializer(new CutMoment(Accuracy.of(Accuracy.name(record), property.getName())));
        }
    }

    /** Whether it is of a class, may be, or is a list of such. */
    private static boolean is(JavaType type, Class<?> wanted) {
        return type.hasRawClass(wanted)
                || (type.isContainerType() || type.isReferenceType()) && is(type.getContentType(), wanted);
    }

    /** Constants by their names. */
    @SuppressWarnings("rawtypes")
    private static final class Constant extends StdSerializer<Enum> {

        Constant() {
            super(Enum.class);
        }

        @Override
        public void serialize(Enum constant, JsonGenerator json, SerializationContext context) {
            json.writeString(Label.of(constant));
        }
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
            if (value instanceof List<?> numbers) {
                json.writeStartArray();
                numbers.forEach(number -> serialize(number, json, context));
                json.writeEndArray();
            } else if (value instanceof Optional<?> some) {
                some.ifPresentOrElse(number -> serialize(number, json, context), json::writeNull);
            } else if (value instanceof OptionalDouble some) {
                some.ifPresentOrElse(number -> json.writeNumber(cut.text(number)), json::writeNull);
            } else {
                json.writeNumber(cut.text(value instanceof Angle angle ? angle.degrees()
                        : value instanceof FNumber fNumber ? fNumber.marked() : (Double) value));
            }
        }
    }

    /**
     * Moments cut one way, with a tenth of a second or as many places as they need, and their offset from
     * UTC.
     */
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
            if (value instanceof Optional<?> some) {
                some.ifPresentOrElse(at -> serialize(at, json, context), json::writeNull);
            } else {
                OffsetDateTime at = value instanceof Instant instant
                        ? instant.atZone((ZoneId) context.getAttribute(ZONE)).toOffsetDateTime()
                        : (OffsetDateTime) value;
                json.writeString(FORM.format(step.of(at)));
            }
        }
    }
}
