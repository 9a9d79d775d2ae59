package org.tidegate.store;

import java.time.Instant;
import java.util.Optional;

/**
 * A message about to be recorded; its sealed bytes are durable already.
 *
 * @param mark keyed hash of the bytes, by which identical bytes are one message
 * @param wrappedKey its key under the master key
 * @param wrappedSalt its salt under the master key
 * @param blob name of its sealed bytes
 * @param saltedHash SHA-256(salt ‖ bytes), hex
 * @param size bytes
 * @param delivered delivery time, where known
 */
public record NewMessage(
        String mark,
        byte[] wrappedKey,
        byte[] wrappedSalt,
        String blob,
        String saltedHash,
        long size,
        Instant taken,
        Optional<Instant> delivered) {}
