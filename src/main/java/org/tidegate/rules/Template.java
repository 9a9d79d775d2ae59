package org.tidegate.rules;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A text of a letter with {@code {placeholders}}.
 *
 * @param text as written
 */
public record Template(String text) {

    /** Every placeholder that a letter may use; times are clock times of the clinic's zone, such as {@code 07:54}. */
    public static final Set<String> PLACEHOLDERS = Set.of(
            "name",
            "ref",
            "service",
            "clinic",
            "clinic_phone",
            "urgent_number",
            "test_date",
            "received",
            "answer_by",
            "until",
            "photograph_from",
            "photograph_until",
            "send_by",
            "read_from",
            "read_until",
            "grace",
            "kit",
            "lot",
            "mark",
            "original_date",
            "new_time",
            "time",
            "from",
            "to",
            "span",
            "host",
            "link",
            "needed_by",
            "shift_start",
            "phone");

    /** Known of every booked test. */
    static final Set<String> BOOKED =
            Set.of("name", "ref", "service", "clinic_phone", "urgent_number", "clinic", "test_date", "kit");

    /** Known where a message about a booked test is answered. */
    static final Set<String> ANSWERING = bookedAnd("received", "answer_by");

    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([^{}]*)}");

    /** @throws IllegalArgumentException where it uses an unknown placeholder or a stray brace */
    public Template {
        for (String name : names(text)) {
            if (!PLACEHOLDERS.contains(name)) {
                throw new IllegalArgumentException(
                        "unknown placeholder {" + name + "}; known: " + String.join(", ", new TreeSet<>(PLACEHOLDERS)));
            }
        }
        if (PLACEHOLDER.matcher(text).replaceAll("").chars().anyMatch(c -> c == '{' || c == '}')) {
            throw new IllegalArgumentException("a brace without its partner");
        }
    }

    /** The placeholders used, sorted. */
    public Set<String> placeholders() {
        return names(text);
    }

    /**
     * The text with every placeholder filled.
     *
     * @throws IllegalArgumentException where a value is missing: no letter goes out with a hole in it
     */
    public String fill(Map<String, String> values) {
        return PLACEHOLDER.matcher(text).replaceAll(m -> {
            String value = values.get(m.group(1));
            if (value == null) {
                throw new IllegalArgumentException("no value for {" + m.group(1) + "}");
            }
            return Matcher.quoteReplacement(value);
        });
    }

    static Set<String> bookedAnd(String... more) {
        Set<String> all = new TreeSet<>(BOOKED);
        all.addAll(Set.of(more));
        return Set.copyOf(all);
    }

    static Set<String> answeringAnd(String more) {
        return bookedAnd("received", "answer_by", more);
    }

    private static Set<String> names(String text) {
        Set<String> names = new TreeSet<>();
        PLACEHOLDER.matcher(text).results().forEach(m -> names.add(m.group(1)));
        return names;
    }
}
