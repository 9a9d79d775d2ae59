package org.tidegate.cli;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/** Files that would cost far more than they weigh, as mail. */
final class HostileFiles {

    private HostileFiles() {}

    /**
     * One mail.
     *
     * @param code the discrepancy that must name what is wrong with it
     */
    record Hostile(String name, String code, String type, byte[] content, int times) {

        byte[] mail(String subject) {
            StringBuilder mail = new StringBuilder("From: crew@tarnpost.example\r\nTo: intake@skarrasound.example\r\n"
                    + "Subject: " + subject + "\r\nMIME-Version: 1.0\r\n"
                    + "Content-Type: multipart/mixed; boundary=b\r\n\r\n--b\r\n\r\n\r\n");
            String coded = Base64.getMimeEncoder().encodeToString(content);
            for (int i = 0; i < times; i++) {
                mail.append("--b\r\nContent-Transfer-Encoding: base64\r\nContent-Type: ")
                        .append(type)
                        .append("\r\nContent-Disposition: attachment; filename=file")
                        .append(i)
                        .append("\r\n\r\n")
                        .append(coded)
                        .append("\r\n");
            }
            return mail.append("--b--\r\n").toString().getBytes(StandardCharsets.US_ASCII);
        }
    }

    static List<Hostile> all() throws IOException {
        byte[] photo = HostilePictures.jpeg(false);
        byte[] progressive = HostilePictures.jpeg(true);
        byte[] wide = HostilePictures.resized(progressive, 6_900, 6_900);
        return List.of(
                one("png-60000", "attachment-unsafe", "image/png", HostilePictures.png(60_000, 60_000, 8, 0, 1)),
                one("png-108-mp", "photo-unreadable", "image/png", HostilePictures.png(10_400, 10_400, 8, 0)),
                one("png-adam7-64-bit", "format-unsupported", "image/png", HostilePictures.png(5_000, 5_000, 16, 1)),
                one("png-texts", "no-photo", "image/png", HostilePictures.pngWithText(300_000_000)),
                one("webp-118-mp", "attachment-unsafe", "image/webp", HostilePictures.webp(16_000, 7_400)),
                one("tiff-one-strip", "attachment-unsafe", "image/tiff", HostilePictures.tiff(10_500, 10_500)),
                one("gif-65535", "attachment-unsafe", "image/gif", HostilePictures.gif(65_535, 65_535)),
                one("gif-cut", "photo-unreadable", "image/gif", HostilePictures.gif(9_000, 9_000)),
                one("jpeg-cut", "format-unsupported", "image/jpeg", Arrays.copyOf(photo, 200)),
                one("jpeg-65000", "attachment-unsafe", "image/jpeg", HostilePictures.resized(photo, 65_000, 65_000)),
                one(
                        "jpeg-progressive",
                        "attachment-unsafe",
                        "image/jpeg",
                        HostilePictures.resized(progressive, 10_900, 10_900)),
                one("jpeg-scans", "attachment-unsafe", "image/jpeg", HostilePictures.manyScans(wide, 20_000)),
                new Hostile("many-photos", "attachment-unsafe", "image/png", HostilePictures.png(500, 400, 8, 0), 300),
                one("pdf-5000", "attachment-unsafe", "application/pdf", pdf(5_000)),
                one("pdf-16-mp", "photo-unreadable", "application/pdf", pdfOf(4_000, 4_000, 48_000_000)),
                one("pdf-inflates", "attachment-unsafe", "application/pdf", pdfOf(400, 400, 400_000_000L)),
                one("zips-nested", "attachment-unsafe", "application/zip", nested(photo, 40)),
                one("zip-bomb", "attachment-unsafe", "application/zip", zip("zeros.bin", 100_000_000L)),
                one("zip-entries", "attachment-unsafe", "application/zip", entries(20_000)));
    }

    private static Hostile one(String name, String code, String type, byte[] content) {
        return new Hostile(name, code, type, content, 1);
    }

    private static byte[] pdf(int images) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage();
            PDResources resources = new PDResources();
            for (int i = 0; i < images; i++) {
                BufferedImage image = new BufferedImage(24, 18, BufferedImage.TYPE_INT_RGB);
                image.setRGB(i % 24, 3, i);
                resources.add(LosslessFactory.createFromImage(document, image));
            }
            page.setResources(resources);
            document.addPage(page);
            document.save(out);
        }
        return out.toByteArray();
    }

    /** A PDF with one deflated picture of zeros. */
    private static byte[] pdfOf(int width, int height, long length) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage();
            PDResources resources = new PDResources();
            byte[] zeros = HostilePictures.zeros(length);
            PDStream stream = new PDStream(document);
            try (var raw = stream.getCOSObject().createRawOutputStream()) {
                raw.write(zeros);
            }
            stream.getCOSObject().setItem(COSName.FILTER, COSName.FLATE_DECODE);
            PDImageXObject image = new PDImageXObject(stream, resources);
            image.setWidth(width);
            image.setHeight(height);
            image.setBitsPerComponent(8);
            image.setColorSpace(PDDeviceRGB.INSTANCE);
            resources.add(image);
            page.setResources(resources);
            document.addPage(page);
            document.save(out);
        }
        return out.toByteArray();
    }

    private static byte[] nested(byte[] photo, int depth) throws IOException {
        byte[] inner = photo;
        for (int i = 0; i < depth; i++) {
            inner = zip(Map.of("inner" + i + (i == 0 ? ".jpg" : ".zip"), inner));
        }
        return inner;
    }

    private static byte[] entries(int count) throws IOException {
        Map<String, byte[]> all = new LinkedHashMap<>();
        for (int i = 0; i < count; i++) {
            all.put("e" + i, new byte[] {1});
        }
        return zip(all);
    }

    private static byte[] zip(Map<String, byte[]> entries) throws IOException {
        return HostilePictures.bytes(out -> {
            try (ZipOutputStream zip = new ZipOutputStream(out)) {
                for (Map.Entry<String, byte[]> e : entries.entrySet()) {
                    zip.putNextEntry(new ZipEntry(e.getKey()));
                    zip.write(e.getValue());
                }
            }
        });
    }

    private static byte[] zip(String name, long zeros) throws IOException {
        return HostilePictures.bytes(out -> {
            try (ZipOutputStream zip = new ZipOutputStream(out)) {
                zip.putNextEntry(new ZipEntry(name));
                byte[] block = new byte[1_000_000];
                for (long left = zeros; left > 0; left -= block.length) {
                    zip.write(block);
                }
            }
        });
    }
}
