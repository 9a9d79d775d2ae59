package org.tidegate.vault;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;

/** The steps of the file system that durability is made of. Nothing counts as kept before it is synced. */
public interface FileLayer {

    /** A new or emptied file. */
    OutputStream create(Path file) throws IOException;

    /** Forces the file's bytes to the disk. */
    void sync(Path file) throws IOException;

    /** Forces the folder's names to the disk. */
    void syncFolder(Path folder) throws IOException;

    /** Replaces {@code to} in one step. */
    void rename(Path from, Path to) throws IOException;

    InputStream open(Path file) throws IOException;

    boolean exists(Path file);

    void deleteIfExists(Path file) throws IOException;

    void createFolders(Path folder) throws IOException;
}
