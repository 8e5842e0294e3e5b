package gloam.view;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import gloam.gear.FNumber;
import gloam.units.Angle;
import java.lang.reflect.Method;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import tools.jackson.databind.BeanProperty;
import tools.jackson.databind.JavaType;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.jsonFormatVisitors.JsonFormatVisitorWrapper;
import tools.jackson.databind.jsonFormatVisitors.JsonObjectFormatVisitor;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * The JSON Schema (draft 2020-12) of all reports, made of what writes them.
 *
 * <p>Every property is required, and none may be added; where there is no value it is null. A number says its
 * unit and to how many places it is cut.
 */
final class ReportSchema {

    private static final Set<Class<?>> WHOLE = Set.of(int.class, long.class, Integer.class,
            OptionalInt.class);
    private static final Set<Class<?>> NUMBER = Set.of(double.class, Double.class, OptionalDouble.class,
            Angle.class, FNumber.class);
    private static final Set<Class<?>> MOMENT = Set.of(Instant.class, OffsetDateTime.class);
    private static final Set<Class<?>> TRUTH = Set.of(boolean.class, Boolean.class);
    private static final Set<Class<?>> ABSENT_AT_TIMES = Set.of(Optional.class, OptionalDouble.class,
            OptionalInt.class);

    private static final List<? extends Class<?>> REPORTS = new ClassFileImporter()
            .importPackagesOf(Report.class).that(assignableTo(Report.class)).stream()
            .filter(JavaClass::isRecord).sorted(Comparator.comparing(JavaClass::getName))
            .map(JavaClass::reflect).toList();

    private static final JsonMapper MAPPER = JsonRenderer.mapper();

    private final ObjectNode schema = JsonNodeFactory.instance.objectNode();
    private final ObjectNode definitions = JsonNodeFactory.instance.objectNode();
    private final Map<String, Class<?>> named = new HashMap<>();

    private ReportSchema() {
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", "What gloam writes with --format json");
        schema.put("type", "object").putObject("properties").putObject("schema").put("const", Report.SCHEMA);
        schema.putArray("required").add("schema");
        ArrayNode reports = schema.putArray("anyOf");
        REPORTS.forEach(report -> reports.addObject().put("$ref", "#/$defs/" + define(report)));
        schema.put("unevaluatedProperties", false);
        schema.set("$defs", definitions);
    }

    /** The schema as text, indented. */
    static String text() {
        return JsonMapper.shared().writerWithDefaultPrettyPrinter()
                .writeValueAsString(new ReportSchema().schema) + "\n";
    }

    private ObjectNode objectOf(Class<?> record) {
        ObjectNode object = JsonNodeFactory.instance.objectNode().put("type", "object");
        ObjectNode properties = object.putObject("properties");
        ArrayNode required = object.putArray("required");
        MAPPER.acceptJsonFormatVisitor(record, new JsonFormatVisitorWrapper.Base() {
            @Override
            public JsonObjectFormatVisitor expectObjectFormat(JavaType type) {
                return new JsonObjectFormatVisitor.Base(getContext()) {
                    @Override
                    public void optionalProperty(BeanProperty property) {
                        if (!property.getType().hasRawClass(Map.class)) {
                            Class<?> owner = property.getMember().getDeclaringClass();
                            properties.set(property.getName(),
                                    of(owner, property.getName(), property.getType()));
                            required.add(property.getName());
                        }
                    }
                };
            }
        });
        for (Method method : record.getMethods()) {
            if (method.isAnnotationPresent(JsonAnyGetter.class)) {
                String unit = method.getName().replaceFirst("^[a-z]+", "");
                object.putObject("patternProperties").putObject(unit + "$").put("type", "number")
                        .put("description", Accuracy.of(method.getName()).words());
            }
        }
        return object;
    }

    private ObjectNode of(Class<?> record, String name, JavaType type) {
        Class<?> raw = type.getRawClass();
        ObjectNode value = raw == Optional.class ? of(record, name, type.getContentType())
                : JsonNodeFactory.instance.objectNode();
        if (raw == List.class) {
            value.put("type", "array").set("items", of(record, name, type.getContentType()));
        } else if (WHOLE.contains(raw)) {
            value.put("type", "integer");
        } else if (NUMBER.contains(raw)) {
            value.put("type", "number").put("description", Accuracy.of(name).words());
        } else if (TRUTH.contains(raw)) {
            value.put("type", "boolean");
        } else if (MOMENT.contains(raw)) {
            value.put("type", "string").put("format", "date-time")
                    .put("description", Accuracy.of(Accuracy.name(record), name).words());
        } else if (raw == LocalDate.class) {
            value.put("type", "string").put("format", "date");
        } else if (raw == String.class || raw == ZoneId.class || raw.isEnum()) {
            value.put("type", "string");
        } else if (raw.isRecord()) {
            value.put("$ref", "#/$defs/" + define(raw)).put("unevaluatedProperties", false);
        } else if (raw != Optional.class) {
            throw new AssertionError(name + " of " + record + " has no JSON form: " + raw);
        }
        return ABSENT_AT_TIMES.contains(raw) ? orNull(value) : value;
    }

    private static ObjectNode orNull(ObjectNode value) {
        if (value.has("$ref")) {
            ObjectNode either = JsonNodeFactory.instance.objectNode();
            either.putArray("anyOf").add(value).addObject().put("type", "null");
            return either;
        }
        String type = value.get("type").stringValue();
        value.putArray("type").add(type).add("null");
        return value;
    }

    /** A record's definition, under a name that no other has. */
    private String define(Class<?> record) {
        String name = Accuracy.name(record);
        Class<?> known = named.putIfAbsent(name, record);
        if (known == null) {
            definitions.putObject(name);
            definitions.set(name, objectOf(record));
        } else if (known != record) {
            throw new AssertionError(known + " and " + record + " are both called " + name);
        }
        return name;
    }
}
