package org.tidegate.booking;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which test: the appointment's reference and which attempt of it.
 *
 * @param attempt 1 for the first kit; 2 after an invalid first
 */
public record TestKey(String ref, int attempt) {

    private static final Pattern WRITTEN = Pattern.compile("([^#\\s]{1,60})(?:#([1-9][0-9]?))?");

    /** Reads {@code REF} or {@code REF#2}; empty for anything else. */
    public static Optional<TestKey> parse(String written) {
        Matcher m = WRITTEN.matcher(written.strip());
        return m.matches()
                ? Optional.of(new TestKey(m.group(1), m.group(2) == null ? 1 : Integer.parseInt(m.group(2))))
                : Optional.empty();
    }

    @Override
    public String toString() {
        return attempt == 1 ? ref : ref + "#" + attempt;
    }
}
