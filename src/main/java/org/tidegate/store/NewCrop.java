package org.tidegate.store;

/**
 * A cassette by itself, sealed and durable, about to be recorded.
 *
 * @param path the attachment path of the picture that it was cut from
 * @param cassette which of the picture's cassettes, from 0
 * @param shape as JSON
 */
public record NewCrop(
        String path,
        int cassette,
        String shape,
        byte[] wrappedKey,
        byte[] wrappedSalt,
        String blob,
        String saltedHash) {}
