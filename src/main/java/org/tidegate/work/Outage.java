package org.tidegate.work;

import java.time.Instant;

/**
 * A time in which our own mail was down.
 *
 * @param from inclusive
 * @param until exclusive
 */
public record Outage(Instant from, Instant until, String reason) {}
