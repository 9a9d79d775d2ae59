package org.tidegate.examination.checks;

import java.util.Optional;

/**
 * What a reader wrote down from the cassette.
 *
 * @param lot lot number printed on it, where legible
 * @param mark the observer's mark, where legible
 * @param marked false where nothing at all is written on the cassette
 */
public record Transcription(Optional<String> lot, Optional<String> mark, boolean marked) {}
