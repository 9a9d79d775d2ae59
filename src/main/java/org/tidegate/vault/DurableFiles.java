package org.tidegate.vault;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

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
        writeAll(Map.of(name, content));
    }

    /**
     * Writes several files with one sync of the folder, which costs as much as a file's own.
     *
     * @throws IOException where anything on the way failed: none of them counts as written then, what can be removed is
     */
    public void writeAll(Map<String, Content> files) throws IOException {
        List<Path> written = new ArrayList<>();
        try {
            for (Map.Entry<String, Content> file : files.entrySet()) {
                Path temporary = folder.resolve(file.getKey() + TEMPORARY);
                written.add(temporary);
                writeTemporary(temporary, file.getValue());
            }
            for (String name : files.keySet()) {
                written.add(folder.resolve(name));
                layer.rename(folder.resolve(name + TEMPORARY), folder.resolve(name));
            }
            layer.syncFolder(folder);
        } catch (IOException | RuntimeException e) {
            written.forEach(file -> dropQuietly(file, e));
            throw e;
        }
    }

    private void writeTemporary(Path temporary, Content content) throws IOException {
        try (OutputStream out = new BufferedOutputStream(layer.create(temporary), BUFFER)) {
            content.writeTo(out);
        }
        layer.sync(temporary);
    }

    private void dropQuietly(Path file, Exception cause) {
        try {
            layer.deleteIfExists(file);
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
