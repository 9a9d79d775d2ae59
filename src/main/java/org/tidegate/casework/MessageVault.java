package org.tidegate.casework;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidegate.finding.Findings;
import org.tidegate.store.NewMessage;
import org.tidegate.store.StoreException;
import org.tidegate.store.StoredJson;
import org.tidegate.store.StoredMessage;
import org.tidegate.vault.BlobStore;
import org.tidegate.vault.DurableFiles;
import org.tidegate.vault.MasterKey;
import org.tidegate.vault.MessageKey;
import org.tidegate.vault.Sealing;

/** Keeps raw messages and findings sealed, each message under its own key. */
public final class MessageVault {

    private final MasterKey master;
    private final BlobStore blobs;
    private final SecureRandom random = new SecureRandom();

    MessageVault(MasterKey master, BlobStore blobs) {
        this.master = master;
        this.blobs = blobs;
    }

    /** The cassettes by themselves. */
    CropVault crops() {
        return new CropVault(master, blobs);
    }

    /** The keyed hash by which identical bytes are one message. */
    String mark(byte[] raw) {
        return HexFormat.of().formatHex(master.mark("message", raw));
    }

    /** The keyed hash of something that may name a person, such as a Message-ID or an address. */
    String mark(String purpose, String value) {
        return HexFormat.of().formatHex(master.mark(purpose, value.getBytes(StandardCharsets.UTF_8)), 0, 16);
    }

    /** Thirty-two hexadecimal digits that nobody can guess. */
    String freshName() {
        byte[] name = new byte[16];
        random.nextBytes(name);
        return HexFormat.of().formatHex(name);
    }

    /** The key under which pictures are fingerprinted. */
    byte[] pictureKey() {
        return master.derive("pictures");
    }

    /** @param mark of the raw bytes, see {@link #mark(byte[])} */
    record Unsealed(byte[] raw, String mark, Optional<Instant> delivered) {}

    /**
     * Seals each under a fresh key and returns when all are durable.
     *
     * @return in the same order
     * @throws StoreException where one cannot be made durable: none is kept then, so that a full disk is not filled further
     */
    List<NewMessage> keep(List<Unsealed> messages, Instant taken) {
        Map<String, DurableFiles.Content> sealed = new LinkedHashMap<>();
        List<NewMessage> kept = new ArrayList<>();
        for (Unsealed m : messages) {
            MessageKey key = MessageKey.random(random);
            sealed.put(key.blobName(), out -> Sealing.seal(key, m.raw(), out));
            kept.add(described(m, key, taken));
        }
        try {
            blobs.put(sealed);
        } catch (IOException e) {
            throw new StoreException("The message cannot be kept: " + e.getMessage(), e);
        }
        return kept;
    }

    private NewMessage described(Unsealed message, MessageKey key, Instant taken) {
        return new NewMessage(
                message.mark(),
                master.wrap(key.key(), "key " + key.blobName()),
                master.wrap(key.salt(), "salt " + key.blobName()),
                key.blobName(),
                key.saltedHash(message.raw()),
                message.raw().length,
                taken,
                message.delivered());
    }

    /** Removes sealed bytes that nothing points to. */
    void drop(String blob) {
        try {
            blobs.delete(blob);
        } catch (IOException e) {
            throw new UncheckedIOException("The blob " + blob + " cannot be removed: " + e.getMessage(), e);
        }
    }

    /**
     * The message byte for byte; empty where it is forgotten.
     *
     * @throws UncheckedIOException where its bytes are missing or damaged, or do not have the hash that the ledger holds
     */
    public Optional<byte[]> raw(StoredMessage message) {
        return key(message).map(key -> {
            try (InputStream sealed = blobs.open(message.blob())) {
                byte[] raw = Sealing.open(key, sealed);
                if (!key.saltedHash(raw).equals(message.saltedHash())) {
                    throw new IOException("its bytes are not those that were taken");
                }
                return raw;
            } catch (IOException e) {
                throw new UncheckedIOException("Message " + message.id().value() + ": " + e.getMessage(), e);
            }
        });
    }

    /** What inspecting the message found, with the pictures it shows here; empty where that is not done yet, or forgotten. */
    public Optional<Findings> findings(StoredMessage message) {
        return message.findings()
                .flatMap(kept -> key(message).map(key -> {
                    try {
                        byte[] json = Sealing.open(beside(key), new ByteArrayInputStream(kept));
                        Findings all = StoredJson.read(json, Findings.class);
                        return message.shown().isEmpty() ? all : all.showing(message::shows);
                    } catch (IOException e) {
                        throw new UncheckedIOException(
                                "Findings of " + message.id().value() + ": " + e.getMessage(), e);
                    }
                }));
    }

    /** Findings sealed under the message's own key; empty where it is forgotten. */
    Optional<byte[]> seal(StoredMessage message, Findings findings) {
        return key(message).map(key -> {
            try {
                ByteArrayOutputStream sealed = new ByteArrayOutputStream();
                Sealing.seal(beside(key), StoredJson.bytes(findings), sealed);
                return sealed.toByteArray();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    private static MessageKey beside(MessageKey key) {
        return new MessageKey(key.key(), key.salt(), key.blobName() + ".findings");
    }

    private Optional<MessageKey> key(StoredMessage message) {
        return message.wrappedKey()
                .flatMap(key -> message.wrappedSalt().map(salt -> {
                    try {
                        return new MessageKey(
                                master.unwrap(key, "key " + message.blob()),
                                master.unwrap(salt, "salt " + message.blob()),
                                message.blob());
                    } catch (IOException e) {
                        throw new UncheckedIOException("Message " + message.id().value() + ": " + e.getMessage(), e);
                    }
                }));
    }
}
