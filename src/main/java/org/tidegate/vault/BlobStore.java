package org.tidegate.vault;

import java.io.IOException;
import java.io.InputStream;

/** Where sealed bytes lie. */
public interface BlobStore {

    /** Returns only when the blob is durable. */
    void put(String name, DurableFiles.Content sealed) throws IOException;

    /** @throws IOException where there is no such blob */
    InputStream open(String name) throws IOException;

    void delete(String name) throws IOException;
}
