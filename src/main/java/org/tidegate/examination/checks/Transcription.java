package org.tidegate.examination.checks;

import java.time.LocalTime;
import java.util.Optional;

/**
 * What a reader wrote down from the cassette.
 *
 * @param lot lot number printed on it, where legible
 * @param mark the observer's mark, where legible
 * @param time the clock time written on it, of the clinic's zone, where legible
 * @param marked false where nothing at all is written on the cassette
 */
public record Transcription(Optional<String> lot, Optional<String> mark, Optional<LocalTime> time, boolean marked) {

    /** Without a time on the cassette. */
    public Transcription(Optional<String> lot, Optional<String> mark, boolean marked) {
        this(lot, mark, Optional.empty(), marked);
    }
}
