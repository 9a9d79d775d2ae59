package org.tidegate.store;

import java.util.Optional;
import org.tidegate.work.MessageId;

/**
 * A cassette by itself, as recorded.
 *
 * @param path the attachment path of the picture that it was cut from
 * @param cassette which of the picture's cassettes, from 0
 * @param shape as JSON
 * @param wrappedKey empty where it is forgotten
 * @param wrappedSalt empty where it is forgotten
 */
public record StoredCrop(
        long id,
        MessageId message,
        String path,
        int cassette,
        String shape,
        Optional<byte[]> wrappedKey,
        Optional<byte[]> wrappedSalt,
        String blob,
        String saltedHash) {}
