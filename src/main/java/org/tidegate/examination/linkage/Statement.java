package org.tidegate.examination.linkage;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tidegate.finding.SubjectReading;

/**
 * What one message states about whose test it is.
 *
 * @param readings alternatives, the best first; the linker may prefer a later one that fits a test better
 * @param fromDisplayName decoded display name of From
 * @param fromAddress addr-spec of From
 * @param arrived when our own server took the message
 */
public record Statement(
        List<SubjectReading> readings,
        Optional<String> fromDisplayName,
        Optional<String> fromAddress,
        Instant arrived) {}
