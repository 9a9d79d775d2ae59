package org.tidegate.ledger;

import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * JSON in the canonical form of RFC 8785, restricted to what the log needs: strings, whole numbers up to 2^53, booleans,
 * lists and maps. Any other value is refused.
 */
public final class CanonicalJson {

    private static final long LARGEST_EXACT = 1L << 53;

    private CanonicalJson() {}

    public static byte[] write(Object value) {
        StringBuilder out = new StringBuilder();
        append(out, value);
        return out.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void append(StringBuilder out, Object value) {
        if (value instanceof String s) {
            string(out, s);
        } else if (value instanceof Integer || value instanceof Long) {
            out.append(exact(((Number) value).longValue()));
        } else if (value instanceof Boolean b) {
            out.append(b);
        } else if (value instanceof List<?> list) {
            list(out, list);
        } else if (value instanceof Map<?, ?> map) {
            map(out, map);
        } else {
            throw new IllegalArgumentException("the log keeps no value of " + value.getClass());
        }
    }

    private static long exact(long number) {
        if (Math.abs(number) > LARGEST_EXACT) {
            throw new IllegalArgumentException(number + " is beyond the whole numbers of RFC 8785 (2^53)");
        }
        return number;
    }

    private static void list(StringBuilder out, List<?> list) {
        out.append('[');
        for (Iterator<?> i = list.iterator(); i.hasNext(); ) {
            append(out, i.next());
            out.append(i.hasNext() ? "," : "");
        }
        out.append(']');
    }

    /** RFC 8785 §3.2.3: keys in the order of their UTF-16 units, which is the order of Java strings. */
    private static void map(StringBuilder out, Map<?, ?> map) {
        TreeMap<String, Object> sorted = new TreeMap<>();
        map.forEach((k, v) -> sorted.put((String) k, v));
        out.append('{');
        String separator = "";
        for (Map.Entry<String, Object> e : sorted.entrySet()) {
            out.append(separator);
            string(out, e.getKey());
            out.append(':');
            append(out, e.getValue());
            separator = ",";
        }
        out.append('}');
    }

    /** RFC 8785 §3.2.2.2. */
    private static void string(StringBuilder out, String s) {
        if (!StandardCharsets.UTF_8.newEncoder().canEncode(s)) {
            throw new IllegalArgumentException("a lone surrogate has no canonical form");
        }
        out.append('"');
        s.chars().forEach(c -> character(out, (char) c));
        out.append('"');
    }

    private static void character(StringBuilder out, char c) {
        switch (c) {
            case '"' -> out.append("\\\"");
            case '\\' -> out.append("\\\\");
            case '\b' -> out.append("\\b");
            case '\f' -> out.append("\\f");
            case '\n' -> out.append("\\n");
            case '\r' -> out.append("\\r");
            case '\t' -> out.append("\\t");
            default -> {
                if (c < 0x20) {
                    out.append("\\u00").append(Character.forDigit(c >> 4, 16)).append(Character.forDigit(c & 15, 16));
                } else {
                    out.append(c);
                }
            }
        }
    }
}
