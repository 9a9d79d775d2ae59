package org.tidegate.message;

import java.io.IOException;
import java.io.InputStream;
import java.util.Iterator;
import java.util.Optional;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;

/** Zip archives. */
final class ZipUnpacker implements Unpacker {

    @Override
    public boolean opens(String type) {
        return type.equals("application/zip");
    }

    @Override
    public void unpack(Attachment container, AttachmentCollector into) throws IOException {
        try (ZipFile zip = open(container)) {
            Iterator<ZipArchiveEntry> entries = zip.getEntries().asIterator();
            while (entries.hasNext() && into.hasRoom(container.path())) {
                ZipArchiveEntry entry = entries.next();
                if (entry.getGeneralPurposeBit().usesEncryption()) {
                    into.problem(Problem.Kind.ENCRYPTED, container.path(), "The archive is encrypted.");
                    return;
                }
                if (!entry.isDirectory() && zip.canReadEntryData(entry)) {
                    add(zip, entry, container, into);
                }
            }
        }
    }

    private static void add(ZipFile zip, ZipArchiveEntry entry, Attachment container, AttachmentCollector into)
            throws IOException {
        try (InputStream stream = zip.getInputStream(entry)) {
            into.addStream(
                    container.path() + "/" + entry.getName(),
                    Optional.of(entry.getName()),
                    Attachment.Container.ZIP,
                    stream);
        }
    }

    static ZipFile open(Attachment container) throws IOException {
        return ZipFile.builder()
                .setSeekableByteChannel(new SeekableInMemoryByteChannel(container.content()))
                .get();
    }
}
