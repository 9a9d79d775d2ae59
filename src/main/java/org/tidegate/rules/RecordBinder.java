package org.tidegate.rules;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;

/** Binds one mapping to one record: unknown, doubled and missing keys are faults. */
final class RecordBinder {

    private static final int TYPO = 3;

    private final String file;
    private final Faults faults;
    private final Binder values;

    RecordBinder(String file, Faults faults, Binder values) {
        this.file = file;
        this.faults = faults;
        this.values = values;
    }

    Optional<Object> bind(Class<?> type, Node node) {
        if (!(node instanceof MappingNode mapping)) {
            faults.at(file, node.getStartMark(), "expected keys with values", "keys: " + String.join(", ", keys(type)));
            return Optional.empty();
        }
        Map<String, Node> byKey = byKey(type, mapping);
        List<Object> arguments = new ArrayList<>();
        for (RecordComponent c : type.getRecordComponents()) {
            argument(c, byKey.get(Names.snake(c.getName())), mapping).ifPresent(arguments::add);
        }
        return arguments.size() == type.getRecordComponents().length
                        && byKey.size() == mapping.getValue().size()
                ? construct(type, arguments, mapping)
                : Optional.empty();
    }

    private Map<String, Node> byKey(Class<?> type, MappingNode mapping) {
        List<String> known = keys(type);
        Map<String, Node> byKey = new LinkedHashMap<>();
        for (NodeTuple t : mapping.getValue()) {
            String key = t.getKeyNode() instanceof ScalarNode s ? s.getValue() : "?";
            if (!known.contains(key)) {
                faults.at(file, t.getKeyNode().getStartMark(), "unknown key '" + key + "'", nearest(key, known));
            } else if (byKey.put(key, t.getValueNode()) != null) {
                faults.at(file, t.getKeyNode().getStartMark(), "the key '" + key + "' is there twice", "keep one");
            }
        }
        return byKey;
    }

    private Optional<Object> argument(RecordComponent c, @Nullable Node node, MappingNode mapping) {
        if (node != null) {
            return values.bind(c.getGenericType(), node, c);
        }
        Optional<Object> absent = whenAbsent(c);
        if (absent.isEmpty()) {
            faults.at(file, mapping.getStartMark(), "the key '" + Names.snake(c.getName()) + "' is missing", doc(c));
        }
        return absent;
    }

    private static Optional<Object> whenAbsent(RecordComponent c) {
        if (c.getType() == Optional.class) {
            return Optional.of(Optional.empty());
        }
        Doc doc = c.getAnnotation(Doc.class);
        if (doc == null || doc.required()) {
            return Optional.empty();
        }
        return c.getType() == List.class
                ? Optional.of(List.of())
                : c.getType() == Map.class ? Optional.of(Map.of()) : Optional.of("");
    }

    private Optional<Object> construct(Class<?> type, List<Object> arguments, MappingNode mapping) {
        try {
            Object bound = Records.create(type, arguments);
            faults.remember(bound, file, mapping.getStartMark());
            return Optional.of(bound);
        } catch (InvocationTargetException e) {
            faults.at(
                    file,
                    mapping.getStartMark(),
                    String.valueOf(e.getTargetException().getMessage()),
                    "");
            return Optional.empty();
        }
    }

    private static List<String> keys(Class<?> type) {
        return Arrays.stream(type.getRecordComponents())
                .map(c -> Names.snake(c.getName()))
                .toList();
    }

    private static String nearest(String key, List<String> known) {
        LevenshteinDistance distance = new LevenshteinDistance(TYPO);
        return known.stream()
                .filter(k -> distance.apply(key, k) >= 0)
                .min((a, b) -> Integer.compare(distance.apply(key, a), distance.apply(key, b)))
                .map(k -> "did you mean '" + k + "'?")
                .orElse("known keys: " + String.join(", ", known));
    }

    private static String doc(RecordComponent c) {
        Doc doc = c.getAnnotation(Doc.class);
        return doc == null ? "" : doc.value();
    }
}
