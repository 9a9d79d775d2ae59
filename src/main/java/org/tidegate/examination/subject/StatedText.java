package org.tidegate.examination.subject;

import java.time.Instant;
import java.util.Optional;

/**
 * What a participant wrote.
 *
 * @param body empty where there is none
 * @param received when it arrived: dates without a year, and days without a date, are meant near it
 */
public record StatedText(
        Optional<String> subject,
        String body,
        Optional<String> fromDisplayName,
        Optional<String> fromAddress,
        Instant received) {}
