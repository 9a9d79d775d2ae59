package org.tidegate.booking;

/**
 * Which test: the appointment's reference and which attempt of it.
 *
 * @param attempt 1 for the first kit; 2 after an invalid first
 */
public record TestKey(String ref, int attempt) {

    @Override
    public String toString() {
        return attempt == 1 ? ref : ref + "#" + attempt;
    }
}
