package org.tidegate.finding;

/**
 * Something a verdict leans on that the message does not prove; DESIGN 6 lists the names.
 *
 * @param name for example {@code same-phone}
 * @param about what it is said of, for example a host; empty where the name says all
 */
public record Assumption(String name, String about) {

    public static Assumption of(String name) {
        return new Assumption(name, "");
    }

    /** {@code name} or {@code name(about)}: the stable form in JSON. */
    @Override
    public String toString() {
        return about.isEmpty() ? name : name + "(" + about + ")";
    }
}
