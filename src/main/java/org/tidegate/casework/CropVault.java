package org.tidegate.casework;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidegate.examination.picture.CassetteCrop;
import org.tidegate.store.NewCrop;
import org.tidegate.store.StoreException;
import org.tidegate.store.StoredCrop;
import org.tidegate.store.StoredJson;
import org.tidegate.vault.BlobStore;
import org.tidegate.vault.DurableFiles;
import org.tidegate.vault.MasterKey;
import org.tidegate.vault.MessageKey;
import org.tidegate.vault.Sealing;

/** Keeps cassettes by themselves, each sealed under a key of its own and not its message's: that may be destroyed before. */
final class CropVault {

    private final MasterKey master;
    private final BlobStore blobs;
    private final SecureRandom random = new SecureRandom();

    CropVault(MasterKey master, BlobStore blobs) {
        this.master = master;
        this.blobs = blobs;
    }

    /** A crop made durable, and where it was cut from. */
    record Sealed(CassetteCrop.Cut cut, NewCrop crop) {}

    /**
     * Seals each and returns when all are durable; nothing is written where there is none.
     *
     * @throws StoreException where one cannot be made durable
     */
    List<Sealed> keep(List<CassetteCrop> crops) {
        Map<String, DurableFiles.Content> contents = new LinkedHashMap<>();
        List<Sealed> kept = new ArrayList<>();
        for (CassetteCrop crop : crops) {
            if (crop instanceof CassetteCrop.Cut cut) {
                MessageKey key = MessageKey.random(random);
                contents.put(key.blobName(), out -> Sealing.seal(key, cut.png(), out));
                kept.add(new Sealed(cut, described(cut, key)));
            }
        }
        try {
            if (!kept.isEmpty()) {
                blobs.put(contents);
            }
        } catch (IOException e) {
            throw new StoreException("A cassette cannot be kept by itself: " + e.getMessage(), e);
        }
        return kept;
    }

    private NewCrop described(CassetteCrop.Cut cut, MessageKey key) {
        return new NewCrop(
                cut.path(),
                cut.cassette(),
                StoredJson.write(cut.shape()),
                master.wrap(key.key(), "key " + key.blobName()),
                master.wrap(key.salt(), "salt " + key.blobName()),
                key.blobName(),
                key.saltedHash(cut.png()));
    }

    /**
     * The PNG byte for byte; empty where it is forgotten.
     *
     * @throws UncheckedIOException where its bytes are missing or damaged, or do not have the hash that the ledger holds
     */
    Optional<byte[]> png(StoredCrop crop) {
        return crop.wrappedKey()
                .flatMap(key -> crop.wrappedSalt().map(salt -> {
                    try (InputStream sealed = blobs.open(crop.blob())) {
                        MessageKey unwrapped = new MessageKey(
                                master.unwrap(key, "key " + crop.blob()),
                                master.unwrap(salt, "salt " + crop.blob()),
                                crop.blob());
                        byte[] png = Sealing.open(unwrapped, sealed);
                        if (!unwrapped.saltedHash(png).equals(crop.saltedHash())) {
                            throw new IOException("its bytes are not those that were kept");
                        }
                        return png;
                    } catch (IOException e) {
                        throw new UncheckedIOException("Cassette " + crop.id() + ": " + e.getMessage(), e);
                    }
                }));
    }
}
