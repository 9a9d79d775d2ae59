package org.tidegate.vault;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** The real disk. */
public final class DiskLayer implements FileLayer {

    @Override
    public OutputStream create(Path file) throws IOException {
        return Files.newOutputStream(file);
    }

    @Override
    public void sync(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    @Override
    public void syncFolder(Path folder) throws IOException {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        }
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    }

    @Override
    public InputStream open(Path file) throws IOException {
        return Files.newInputStream(file);
    }

    @Override
    public boolean exists(Path file) {
        return Files.exists(file);
    }

    @Override
    public void deleteIfExists(Path file) throws IOException {
        Files.deleteIfExists(file);
    }

    @Override
    public void createFolders(Path folder) throws IOException {
        Files.createDirectories(folder);
    }
}
