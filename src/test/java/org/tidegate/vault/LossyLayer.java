package org.tidegate.vault;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** A disk in memory that keeps after a crash only what was synced: bytes by the file's sync, names by the folder's. */
public final class LossyLayer implements FileLayer {

    private static final class Inode {
        byte[] seen = {};
        byte[] synced = {};
    }

    /** What reaches the disk: a test that breaks a rule must fail, else it proves nothing. */
    public enum Sync {
        ALL,
        NO_FILES,
        NO_FOLDERS
    }

    private final Map<Path, Inode> names = new TreeMap<>();
    private final Map<Path, Inode> lastingNames = new TreeMap<>();
    private final Set<Path> folders = new TreeSet<>();
    private final Set<Path> lastingFolders = new TreeSet<>();
    private Sync heeded = Sync.ALL;
    private long room = Long.MAX_VALUE;
    private int stepsLeft = Integer.MAX_VALUE;

    /** From now on some syncs do nothing, as if the program had forgotten them. */
    public void heed(Sync kind) {
        heeded = kind;
    }

    /** From now on a write beyond this many bytes fails as on a full disk. */
    public void limit(long bytes) {
        room = bytes;
    }

    /** The machine stops before the step after the next {@code steps}. */
    public void stopAfter(int steps) {
        stepsLeft = steps;
    }

    /** The power is gone; what was not synced is too. */
    public void crash() {
        stepsLeft = Integer.MAX_VALUE;
        folders.retainAll(lastingFolders);
        folders.removeIf(f -> lost(f.getParent()));
        names.clear();
        for (Map.Entry<Path, Inode> e : lastingNames.entrySet()) {
            e.getValue().seen = e.getValue().synced;
            if (!lost(e.getKey().getParent())) {
                names.put(e.getKey(), e.getValue());
            }
        }
    }

    private boolean lost(Path folder) {
        return folder != null
                && folder.getParent() != null
                && (!lastingFolders.contains(folder) || lost(folder.getParent()));
    }

    private void step() throws IOException {
        if (stepsLeft-- <= 0) {
            throw new IOException("the machine stopped");
        }
    }

    @Override
    public OutputStream create(Path file) throws IOException {
        step();
        Inode inode = names.computeIfAbsent(file, f -> new Inode());
        inode.seen = new byte[0];
        return new ByteArrayOutputStream() {
            @Override
            public void close() throws IOException {
                step();
                if (size() > room) {
                    throw new IOException("No space left on device");
                }
                room -= size();
                inode.seen = toByteArray();
            }
        };
    }

    @Override
    public void sync(Path file) throws IOException {
        step();
        if (heeded != Sync.NO_FILES) {
            Inode inode = inode(file);
            inode.synced = inode.seen;
        }
    }

    @Override
    public void syncFolder(Path folder) throws IOException {
        step();
        if (heeded == Sync.NO_FOLDERS) {
            return;
        }
        folders.stream().filter(f -> folder.equals(f.getParent())).forEach(lastingFolders::add);
        Map<Path, Inode> now = new HashMap<>(names);
        lastingNames.keySet().removeIf(f -> folder.equals(f.getParent()) && !now.containsKey(f));
        now.forEach((f, inode) -> {
            if (folder.equals(f.getParent())) {
                lastingNames.put(f, inode);
            }
        });
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        step();
        names.put(to, inode(from));
        names.remove(from);
    }

    @Override
    public InputStream open(Path file) throws IOException {
        return new ByteArrayInputStream(inode(file).seen);
    }

    @Override
    public boolean exists(Path file) {
        return names.containsKey(file) || folders.contains(file) || file.getParent() == null;
    }

    @Override
    public void deleteIfExists(Path file) throws IOException {
        step();
        names.remove(file);
    }

    @Override
    public void createFolders(Path folder) {
        for (Path at = folder; at.getParent() != null; at = at.getParent()) {
            folders.add(at);
        }
    }

    private Inode inode(Path file) throws IOException {
        Inode inode = names.get(file);
        if (inode == null) {
            throw new FileNotFoundException(file.toString());
        }
        return inode;
    }
}
