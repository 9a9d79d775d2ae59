package org.tidegate.message;

import java.io.IOException;
import java.io.InputStream;
import java.util.Collections;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;
import org.tidegate.message.Attachment.Container;

/** Files inside a zip archive, and the media files of an office document that is one. */
final class ZipOpener {

    private final FileOpener files;

    ZipOpener(FileOpener files) {
        this.files = files;
    }

    void open(String path, byte[] content, int depth, Container container) throws IOException {
        try (ZipFile zip = ZipFile.builder()
                .setSeekableByteChannel(new SeekableInMemoryByteChannel(content))
                .get()) {
            int seen = 0;
            for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
                if (++seen > files.limits().parts()) {
                    files.problem(
                            Problem.Kind.OVER_LIMIT,
                            path,
                            "An archive with more files than the limit; the rest was not looked at.");
                    return;
                }
                entry(zip, entry, path, depth, container);
            }
        }
    }

    private void entry(ZipFile zip, ZipArchiveEntry entry, String path, int depth, Container container)
            throws IOException {
        String name = entry.getName();
        if (entry.isDirectory() || (container == Container.OFFICE && !isMedia(name))) {
            macro(name, path, container);
            return;
        }
        if (entry.getGeneralPurposeBit().usesEncryption()) {
            files.problem(Problem.Kind.ENCRYPTED, path, "An encrypted archive: nobody here can look inside.");
            return;
        }
        long most = files.limits().attachmentBytes();
        try (InputStream in = zip.getInputStream(entry)) {
            byte[] bytes = in.readNBytes((int) Math.min(most, Integer.MAX_VALUE - 8L));
            if (bytes.length == most) {
                files.problem(
                        Problem.Kind.OVER_LIMIT,
                        path,
                        "A packed file larger than the limit; its end was not looked at.");
            }
            String plain = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
            files.open(path + "/" + plain, Optional.of(plain), "", container, false, bytes, depth + 1);
        }
    }

    private static boolean isMedia(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return lower.contains("/media/") || lower.startsWith("pictures/");
    }

    private void macro(String name, String path, Container container) {
        if (container == Container.OFFICE && name.toLowerCase(Locale.ROOT).endsWith("vbaproject.bin")) {
            files.problem(Problem.Kind.ACTIVE_CONTENT, path, "An office document with macros.");
        }
    }
}
