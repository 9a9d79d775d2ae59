package org.tidegate.rules;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * Binds the nodes of one YAML file to records by reflection: keys are the snake_case names of the components. A value that
 * cannot be bound is reported and left empty, so that one pass finds every fault.
 */
final class Binder {

    private final String file;
    private final Faults faults;
    private final RecordBinder records;

    Binder(String file, Faults faults) {
        this.file = file;
        this.faults = faults;
        this.records = new RecordBinder(file, faults, this);
    }

    /** Binds a node; empty exactly where a fault was reported. */
    Optional<Object> bind(Type type, Node node, @Nullable RecordComponent component) {
        if (type instanceof ParameterizedType p) {
            return bindGeneric(p, node, component);
        }
        Class<?> raw = (Class<?>) type;
        return Scalars.kind(raw).isPresent() ? bindScalar(raw, node, component) : records.bind(raw, node);
    }

    private Optional<Object> bindGeneric(ParameterizedType type, Node node, @Nullable RecordComponent component) {
        Type[] arguments = type.getActualTypeArguments();
        Class<?> raw = (Class<?>) type.getRawType();
        if (raw == Optional.class) {
            return bind(arguments[0], node, component).map(Optional::of);
        }
        return raw == List.class
                ? bindList(arguments[0], node, component)
                : bindMap(arguments[0], arguments[1], node, component);
    }

    private Optional<Object> bindList(Type element, Node node, @Nullable RecordComponent component) {
        if (!(node instanceof SequenceNode sequence)) {
            return wrong(node, "expected a list", "start each entry with a dash");
        }
        List<Object> bound = new ArrayList<>();
        for (Node n : sequence.getValue()) {
            bind(element, n, component).ifPresent(bound::add);
        }
        return bound.size() == sequence.getValue().size() ? Optional.of(List.copyOf(bound)) : Optional.empty();
    }

    private Optional<Object> bindMap(Type key, Type value, Node node, @Nullable RecordComponent component) {
        if (!(node instanceof MappingNode mapping)) {
            return wrong(node, "expected keys with values", "write key: value, one a line");
        }
        Map<Object, Object> bound = new LinkedHashMap<>();
        for (NodeTuple t : mapping.getValue()) {
            Optional<Object> k = bindScalar((Class<?>) key, t.getKeyNode(), null);
            Optional<Object> v = bind(value, t.getValueNode(), component);
            if (k.isPresent() && v.isPresent() && bound.put(k.get(), v.get()) != null) {
                wrong(t.getKeyNode(), "the key is there twice", "keep one of them");
            }
        }
        return bound.size() == mapping.getValue().size()
                ? Optional.of(Collections.unmodifiableMap(bound))
                : Optional.empty();
    }

    private Optional<Object> bindScalar(Class<?> type, Node node, @Nullable RecordComponent component) {
        Scalars.Kind kind = Scalars.kind(type)
                .orElseThrow(() -> new IllegalStateException("rule files cannot hold a " + type.getSimpleName()));
        if (!(node instanceof ScalarNode scalar) || node.getTag().equals(Tag.NULL)) {
            return wrong(node, "expected " + kind.expected(), "");
        }
        if (type == String.class && !node.getTag().equals(Tag.STR)) {
            return wrong(node, "'" + scalar.getValue() + "' is a number, date or truth value to YAML", "quote it");
        }
        try {
            return checked(kind.parse().apply(scalar.getValue().strip()), node, component);
        } catch (IllegalArgumentException | DateTimeException e) {
            String why = type == Condition.class || type == Template.class ? ": " + e.getMessage() : "";
            return wrong(node, "'" + scalar.getValue() + "' is not " + kind.expected() + why, "");
        }
    }

    private Optional<Object> checked(Object value, Node node, @Nullable RecordComponent component) {
        Range range = component == null ? null : component.getAnnotation(Range.class);
        if (value instanceof Number n && range != null) {
            double d = n.doubleValue();
            if (d < range.min() || d > range.max()) {
                return wrong(node, n + " is out of range", "from " + range.min() + " to " + range.max());
            }
        }
        if (value instanceof String s && s.isBlank()) {
            return wrong(node, "the text is empty", "write something, or leave the key out where it may be left out");
        }
        Requires requires = component == null ? null : component.getAnnotation(Requires.class);
        if (value instanceof Template t && requires != null) {
            List<String> missing = new ArrayList<>(List.of(requires.value()));
            missing.removeAll(t.placeholders());
            if (!missing.isEmpty()) {
                return wrong(node, "the text lacks {" + String.join("}, {", missing) + "}", "say it in the text");
            }
        }
        return Optional.of(value);
    }

    private Optional<Object> wrong(Node node, String what, String hint) {
        faults.at(file, node.getStartMark(), what, hint);
        return Optional.empty();
    }
}
