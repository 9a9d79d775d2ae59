package org.tidegate.rules;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.Duration;
import java.time.LocalTime;
import java.time.Period;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.tidegate.finding.DiscrepancyCode;

/** Writes the JSON Schema (draft 2020-12) of a rule file from the records that it is bound to. */
final class SchemaWriter {

    private static final Map<Class<?>, Map<String, Object>> PLAIN = Map.ofEntries(
            Map.entry(boolean.class, Map.of("type", "boolean")),
            Map.entry(int.class, Map.of("type", "integer")),
            Map.entry(long.class, Map.of("type", "integer")),
            Map.entry(Integer.class, Map.of("type", "integer")),
            Map.entry(double.class, Map.of("type", "number")),
            Map.entry(Double.class, Map.of("type", "number")),
            Map.entry(Duration.class, pattern("^P(?=.)(\\d+D)?(T(?=.)(\\d+H)?(\\d+M)?(\\d+(\\.\\d+)?S)?)?$")),
            Map.entry(Period.class, pattern("^P(?=.)(\\d+Y)?(\\d+M)?(\\d+W)?(\\d+D)?$")),
            Map.entry(LocalTime.class, pattern("^\\d\\d:\\d\\d(:\\d\\d)?$")),
            Map.entry(Condition.class, Map.of("type", List.of("string", "boolean"))));

    private SchemaWriter() {}

    static Map<String, Object> of(String title, Type type) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", title);
        schema.putAll(schema(type, Optional.empty()));
        return schema;
    }

    private static Map<String, Object> schema(Type type, Optional<RecordComponent> component) {
        if (type instanceof ParameterizedType p) {
            return generic(p, component);
        }
        Class<?> raw = (Class<?>) type;
        if (Scalars.kind(raw).isEmpty()) {
            return object(raw);
        }
        Map<String, Object> plain = new TreeMap<>(
                raw.isEnum()
                        ? Map.of("enum", names(raw))
                        : PLAIN.getOrDefault(raw, Map.of("type", "string", "minLength", 1)));
        component.map(c -> c.getAnnotation(Range.class)).ifPresent(r -> {
            plain.put("minimum", r.min());
            if (r.max() < Long.MAX_VALUE) {
                plain.put("maximum", r.max());
            }
        });
        return plain;
    }

    private static Map<String, Object> generic(ParameterizedType type, Optional<RecordComponent> component) {
        Type[] arguments = type.getActualTypeArguments();
        Map<String, Object> schema = new LinkedHashMap<>();
        if (type.getRawType() == List.class) {
            schema.put("type", "array");
            schema.put("items", schema(arguments[0], component));
        } else if (type.getRawType() == Map.class) {
            schema.put("type", "object");
            schema.put("propertyNames", schema(arguments[0], Optional.empty()));
            schema.put("additionalProperties", schema(arguments[1], component));
        } else {
            schema.putAll(schema(arguments[0], component));
        }
        return schema;
    }

    private static Map<String, Object> object(Class<?> record) {
        Map<String, Object> properties = new LinkedHashMap<>();
        List<String> required = new ArrayList<>();
        for (RecordComponent c : record.getRecordComponents()) {
            Map<String, Object> property = new LinkedHashMap<>();
            Optional.ofNullable(c.getAnnotation(Doc.class)).ifPresent(d -> property.put("description", d.value()));
            property.putAll(schema(c.getGenericType(), Optional.of(c)));
            properties.put(Names.snake(c.getName()), property);
            if (isRequired(c)) {
                required.add(Names.snake(c.getName()));
            }
        }
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "object");
        schema.put("properties", properties);
        schema.put("required", required);
        schema.put("additionalProperties", false);
        return schema;
    }

    static boolean isRequired(RecordComponent c) {
        Doc doc = c.getAnnotation(Doc.class);
        return c.getType() != Optional.class && (doc == null || doc.required());
    }

    private static List<String> names(Class<?> type) {
        return type == DiscrepancyCode.class
                ? Arrays.stream(DiscrepancyCode.values())
                        .map(DiscrepancyCode::code)
                        .toList()
                : Arrays.stream(type.getEnumConstants())
                        .map(c -> ((Enum<?>) c).name().toLowerCase(Locale.ROOT))
                        .toList();
    }

    private static Map<String, Object> pattern(String regex) {
        return new TreeMap<>(Map.of("type", "string", "pattern", regex));
    }
}
