package org.tidegate.store;

import java.time.Instant;
import org.tidegate.work.UserId;

/** A lot that must not be used. */
public record QuarantinedLot(String lot, Instant since, String reason, UserId who) {}
