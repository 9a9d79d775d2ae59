package org.tidegate.message;

import java.util.Optional;

/**
 * One {@code Received} line (RFC 5321 §4.4).
 *
 * @param position 0 for the topmost line, the one written last
 * @param helo what the sending host called itself after {@code from}
 * @param peer the address that the receiving host saw, as a textual IP address; never taken from the HELO name
 * @param by the host that wrote the line
 * @param protocol the word after {@code with}
 * @param time when it was written; empty where it cannot be read
 * @param line the unfolded line, for the derivation
 */
public record TraceHop(
        int position,
        Optional<String> helo,
        Optional<String> peer,
        Optional<String> by,
        Optional<String> protocol,
        Optional<HeaderDate> time,
        String line) {}
