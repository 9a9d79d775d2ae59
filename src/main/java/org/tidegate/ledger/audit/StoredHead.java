package org.tidegate.ledger.audit;

/**
 * A signed head as it lies in the store.
 *
 * @param root hexadecimal
 * @param time as it was signed, ISO 8601 in UTC
 * @param keyId the key that signed
 * @param signature base64
 */
public record StoredHead(long size, String root, String time, String keyId, String signature) {}
