package org.tidegate.vault;

import java.io.IOException;
import java.io.InputStream;

/** Blobs as files of one folder. */
public final class FileBlobs implements BlobStore {

    private final DurableFiles files;

    public FileBlobs(DurableFiles files) {
        this.files = files;
    }

    @Override
    public void put(String name, DurableFiles.Content sealed) throws IOException {
        files.write(name, sealed);
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
