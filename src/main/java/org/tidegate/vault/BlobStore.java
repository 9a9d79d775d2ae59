package org.tidegate.vault;

import java.io.IOException;
import java.io.InputStream;
import java.util.Map;

/** Where sealed bytes lie. */
public interface BlobStore {

    /**
     * Returns only when all are durable.
     *
     * @param sealed what fills each blob, by its name
     * @throws IOException where one cannot be kept: none is kept then
     */
    void put(Map<String, DurableFiles.Content> sealed) throws IOException;

    /** @throws IOException where there is no such blob */
    InputStream open(String name) throws IOException;

    void delete(String name) throws IOException;
}
