package org.tidegate.finding;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What is known of a message's delivery beside its bytes: recorded inputs of {@code inspect}.
 *
 * @param delivered delivery time, where the store knows it for that (INTERNALDATE by configuration, or given by hand)
 * @param pictureKey key under which pictures are fingerprinted; at least 16 bytes
 * @param decoders names of outside decoders that are installed, for example {@code heif}
 */
public record DeliveryFacts(Optional<Instant> delivered, byte[] pictureKey, List<String> decoders) {

    public DeliveryFacts {
        decoders = List.copyOf(decoders);
    }
}
