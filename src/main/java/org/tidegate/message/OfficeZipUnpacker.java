package org.tidegate.message;

import java.io.IOException;
import java.io.InputStream;
import java.util.Iterator;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;

/** Pictures in office documents that are zip archives: Office Open XML (ECMA-376) and OpenDocument. */
final class OfficeZipUnpacker implements Unpacker {

    @Override
    public boolean opens(String type) {
        return type.startsWith("application/vnd.openxmlformats")
                || type.startsWith("application/vnd.oasis.opendocument")
                || type.startsWith("application/vnd.ms-word.document.macroenabled")
                || type.startsWith("application/vnd.ms-excel.sheet.macroenabled")
                || type.startsWith("application/vnd.ms-powerpoint.presentation.macroenabled")
                || type.equals("application/x-tika-ooxml");
    }

    @Override
    public void unpack(Attachment container, AttachmentCollector into) throws IOException {
        try (ZipFile zip = ZipUnpacker.open(container)) {
            Iterator<ZipArchiveEntry> entries = zip.getEntries().asIterator();
            while (entries.hasNext() && into.hasRoom(container.path())) {
                ZipArchiveEntry entry = entries.next();
                String name = entry.getName().toLowerCase(Locale.ROOT);
                if (isMacro(name)) {
                    into.problem(Problem.Kind.ACTIVE_CONTENT, container.path(), "An office document with macros.");
                } else if (isPicture(name) && zip.canReadEntryData(entry)) {
                    add(zip, entry, container, into);
                }
            }
        }
    }

    private static boolean isMacro(String name) {
        return name.endsWith("vbaproject.bin") || (name.startsWith("basic/") && name.endsWith(".xml"));
    }

    /** OPC keeps pictures in a media folder, OpenDocument in Pictures. */
    private static boolean isPicture(String name) {
        return !name.endsWith("/") && (name.contains("/media/") || name.startsWith("pictures/"));
    }

    private static void add(ZipFile zip, ZipArchiveEntry entry, Attachment container, AttachmentCollector into)
            throws IOException {
        try (InputStream stream = zip.getInputStream(entry)) {
            into.addStream(
                    container.path() + "/" + entry.getName(),
                    Optional.of(entry.getName()),
                    Attachment.Container.OFFICE,
                    stream);
        }
    }
}
