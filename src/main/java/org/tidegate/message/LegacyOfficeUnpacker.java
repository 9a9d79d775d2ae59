package org.tidegate.message;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.apache.poi.hslf.usermodel.HSLFSlideShow;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.hwpf.HWPFDocument;
import org.apache.poi.hwpf.usermodel.Picture;
import org.apache.poi.poifs.filesystem.DirectoryNode;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.sl.usermodel.PictureData;

/** Pictures and macros in office documents of the older, OLE2 kind. */
final class LegacyOfficeUnpacker implements Unpacker {

    private static final List<String> TYPES = List.of(
            "application/msword",
            "application/vnd.ms-excel",
            "application/vnd.ms-powerpoint",
            "application/x-tika-msoffice",
            "application/x-tika-ooxml-protected");

    private static final List<String> MACRO_FOLDERS = List.of("Macros", "_VBA_PROJECT_CUR", "VBA");

    @Override
    public boolean opens(String type) {
        return TYPES.contains(type);
    }

    @Override
    public void unpack(Attachment container, AttachmentCollector into) throws IOException {
        try (POIFSFileSystem files = new POIFSFileSystem(new ByteArrayInputStream(container.content()))) {
            DirectoryNode root = files.getRoot();
            if (root.hasEntry("EncryptedPackage")) {
                into.problem(Problem.Kind.ENCRYPTED, container.path(), "The document is protected by a password.");
                return;
            }
            if (MACRO_FOLDERS.stream().anyMatch(root::hasEntry)) {
                into.problem(Problem.Kind.ACTIVE_CONTENT, container.path(), "An office document with macros.");
            }
            pictures(root, container.path(), into);
        }
    }

    private static void pictures(DirectoryNode root, String path, AttachmentCollector into) throws IOException {
        if (root.hasEntry("WordDocument")) {
            try (HWPFDocument document = new HWPFDocument(root)) {
                add(
                        document.getPicturesTable().getAllPictures().stream()
                                .map(Picture::getContent)
                                .toList(),
                        path,
                        into);
            }
        } else if (root.hasEntry("Workbook")) {
            try (HSSFWorkbook book = new HSSFWorkbook(root, false)) {
                add(book.getAllPictures().stream().map(p -> p.getData()).toList(), path, into);
            }
        } else if (root.hasEntry("PowerPoint Document")) {
            try (HSLFSlideShow slides = new HSLFSlideShow(root)) {
                add(slides.getPictureData().stream().map(PictureData::getData).toList(), path, into);
            }
        }
    }

    private static void add(List<byte[]> pictures, String path, AttachmentCollector into) throws IOException {
        int number = 0;
        for (byte[] picture : pictures) {
            into.addStream(
                    path + "/image-" + number++,
                    Optional.empty(),
                    Attachment.Container.OFFICE,
                    new ByteArrayInputStream(picture));
        }
    }
}
