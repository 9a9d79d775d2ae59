package org.tidegate.store;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.Map;
import org.tidegate.vault.BlobStore;
import org.tidegate.vault.DurableFiles;

/** Blobs as rows, so that several machines share them. */
public final class RowBlobs implements BlobStore {

    private final Store store;

    public RowBlobs(Store store) {
        this.store = store;
    }

    @Override
    public void put(Map<String, DurableFiles.Content> sealed) throws IOException {
        Map<String, byte[]> rows = new LinkedHashMap<>();
        for (Map.Entry<String, DurableFiles.Content> blob : sealed.entrySet()) {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            blob.getValue().writeTo(bytes);
            rows.put(blob.getKey(), bytes.toByteArray());
        }
        store.write(tx -> rows.entrySet().stream()
                .mapToInt(row ->
                        tx.update("INSERT INTO blobs (name, sealed) VALUES (?, ?)", row.getKey(), row.getValue()))
                .sum());
    }

    @Override
    public InputStream open(String name) throws IOException {
        byte[] sealed = store.read(
                        tx -> tx.first("SELECT sealed FROM blobs WHERE name = ?", r -> r.bytes("sealed"), name))
                .orElseThrow(() -> new IOException("there is no blob " + name));
        return new ByteArrayInputStream(sealed);
    }

    @Override
    public void delete(String name) {
        store.write(tx -> tx.update("DELETE FROM blobs WHERE name = ?", name));
    }
}
