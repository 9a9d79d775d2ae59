package org.tidegate.rules;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Map;
import java.util.Optional;

/** Writes the reference of all keys of the rule files, in Markdown, from the records that they are bound to. */
final class ReferenceWriter {

    private final StringBuilder out = new StringBuilder();

    static String write(Map<String, Type> files) {
        ReferenceWriter writer = new ReferenceWriter();
        writer.out.append("""
                # Reference of the rule files

                Generated from the definitions by `ReferenceTest`; change those, not this page. Every file is YAML 1.1 in UTF-8. Durations and
                periods are ISO 8601, times are wall times of the clinic's zone. `tidegate check-rules DIR` reports every fault with file, line and a hint.
                """);
        files.forEach(writer::file);
        return writer.out.toString();
    }

    private void file(String name, Type type) {
        Class<?> record = recordIn(type).orElseThrow();
        out.append("\n## `").append(name).append("`\n\n").append(doc(record));
        out.append(type instanceof ParameterizedType ? " A list of entries with these keys:\n" : "\n");
        rows("", record, "\n| key | value | must | meaning |\n| --- | --- | --- | --- |\n");
    }

    private void rows(String prefix, Class<?> record, String head) {
        out.append(head);
        for (RecordComponent c : record.getRecordComponents()) {
            String key = prefix + Names.snake(c.getName());
            String must = SchemaWriter.isRequired(c) ? "yes" : "no";
            String meaning = Optional.ofNullable(c.getAnnotation(Doc.class))
                    .map(Doc::value)
                    .orElse("");
            out.append("| `" + key + "` | " + kind(c.getGenericType()) + range(c) + " | " + must + " | " + meaning
                    + " |\n");
            recordIn(c.getGenericType()).ifPresent(r -> rows(key + ".", r, ""));
        }
    }

    private static String kind(Type type) {
        if (type instanceof ParameterizedType p) {
            Type[] arguments = p.getActualTypeArguments();
            String inner = kind(arguments[arguments.length - 1]);
            return p.getRawType() == Optional.class
                    ? inner
                    : p.getRawType() == Map.class ? "keys, each " + inner : "list of " + inner;
        }
        return Scalars.kind((Class<?>) type).map(Scalars.Kind::expected).orElse("keys");
    }

    private static String range(RecordComponent c) {
        Range range = c.getAnnotation(Range.class);
        if (range == null) {
            return "";
        }
        return range.max() < Long.MAX_VALUE ? ", " + range.min() + " to " + range.max() : ", at least " + range.min();
    }

    /** The record that the type holds, directly or as element. */
    private static Optional<Class<?>> recordIn(Type type) {
        if (type instanceof ParameterizedType p) {
            Type[] arguments = p.getActualTypeArguments();
            return recordIn(arguments[arguments.length - 1]);
        }
        Class<?> raw = (Class<?>) type;
        return Scalars.kind(raw).isEmpty() ? Optional.of(raw) : Optional.empty();
    }

    private static String doc(Class<?> record) {
        return Optional.ofNullable(record.getAnnotation(Doc.class))
                .map(Doc::value)
                .orElse("");
    }
}
