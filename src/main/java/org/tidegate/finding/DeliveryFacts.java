package org.tidegate.finding;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tidegate.message.RecordedKey;

/**
 * What is known of a message's delivery beside its bytes: recorded inputs of {@code inspect}.
 *
 * @param delivered delivery time, where the store knows it for that (INTERNALDATE by configuration, or given by hand)
 * @param pictureKey key under which pictures are fingerprinted; at least 16 bytes
 * @param decoders names of outside decoders that are installed, for example {@code heif}
 * @param dkimKeys keys of signing domains as they were when the message was taken
 */
public record DeliveryFacts(
        Optional<Instant> delivered, byte[] pictureKey, List<String> decoders, List<RecordedKey> dkimKeys) {

    public DeliveryFacts {
        decoders = List.copyOf(decoders);
        dkimKeys = List.copyOf(dkimKeys);
    }

    /** Without any recorded key. */
    public DeliveryFacts(Optional<Instant> delivered, byte[] pictureKey, List<String> decoders) {
        this(delivered, pictureKey, decoders, List.of());
    }
}
