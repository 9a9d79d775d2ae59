package org.tidegate.vault;

import java.io.IOException;
import java.io.InputStream;
import java.util.Map;

/** Blobs as files of one folder. */
public final class FileBlobs implements BlobStore {

    private final DurableFiles files;

    public FileBlobs(DurableFiles files) {
        this.files = files;
    }

    @Override
    public void put(Map<String, DurableFiles.Content> sealed) throws IOException {
        files.writeAll(sealed);
    }

    @Override
    public InputStream open(String name) throws IOException {
        return files.open(name);
    }

    @Override
    public void delete(String name) throws IOException {
        files.delete(name);
    }
}
