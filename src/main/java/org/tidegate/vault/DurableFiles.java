package org.tidegate.vault;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Files of one folder that are whole and lasting once {@link #write} has returned. */
public final class DurableFiles {

    private static final String TEMPORARY = ".part";
    private static final int BUFFER = 1 << 16;

    private final FileLayer layer;
    private final Path folder;

    /** Makes the folder, and those above it, where they are missing. */
    public DurableFiles(FileLayer layer, Path folder) throws IOException {
        this.layer = layer;
        this.folder = folder;
        List<Path> above = foldersAboveMissing(folder.toAbsolutePath());
        if (!above.isEmpty()) {
            layer.createFolders(folder);
        }
        for (Path named : above) {
            layer.syncFolder(named);
        }
    }

    /** Whose names have to be synced: the parent of each missing folder. */
    private List<Path> foldersAboveMissing(Path whole) {
        List<Path> above = new ArrayList<>();
        Path parent = whole.getParent();
        for (Path at = whole; parent != null && !layer.exists(at); at = parent, parent = at.getParent()) {
            above.add(parent);
        }
        return above;
    }

    /** What fills a file. */
    @FunctionalInterface
    public interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    /** @throws IOException where anything on the way failed: the file then counts as not written */
    public void write(String name, Content content) throws IOException {
        Path temporary = folder.resolve(name + TEMPORARY);
        try {
            try (OutputStream out = new BufferedOutputStream(layer.create(temporary), BUFFER)) {
                content.writeTo(out);
            }
            layer.sync(temporary);
            layer.rename(temporary, folder.resolve(name));
            layer.syncFolder(folder);
        } catch (IOException e) {
            dropQuietly(temporary, e);
            throw e;
        }
    }

    private void dropQuietly(Path temporary, IOException cause) {
        try {
            layer.deleteIfExists(temporary);
        } catch (IOException e) {
            cause.addSuppressed(e);
        }
    }

    public InputStream open(String name) throws IOException {
        return layer.open(folder.resolve(name));
    }

    public boolean exists(String name) {
        return layer.exists(folder.resolve(name));
    }

    public void delete(String name) throws IOException {
        layer.deleteIfExists(folder.resolve(name));
        layer.syncFolder(folder);
    }
}
