package org.tidegate.message;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xwpf.usermodel.Document;
import org.apache.poi.xwpf.usermodel.XWPFDocument;

/** Messages and files made on the spot by general libraries, so that nothing binary lies in the repository. */
final class SampleMail {

    private SampleMail() {}

    interface Writing {
        void to(ByteArrayOutputStream out) throws Exception;
    }

    static byte[] bytes(Writing writing) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            writing.to(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    static BufferedImage picture() {
        BufferedImage image = new BufferedImage(64, 48, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < 48; i++) {
            image.setRGB(i, i, Color.ORANGE.getRGB());
        }
        return image;
    }

    static byte[] jpeg() {
        return bytes(out -> ImageIO.write(picture(), "jpg", out));
    }

    static byte[] zip(Map<String, byte[]> entries) {
        return bytes(out -> {
            try (ZipOutputStream zip = new ZipOutputStream(out)) {
                for (Map.Entry<String, byte[]> e : entries.entrySet()) {
                    zip.putNextEntry(new ZipEntry(e.getKey()));
                    zip.write(e.getValue());
                }
            }
        });
    }

    /** One page with a photo and a drawn picture; {@code password} empty for none. */
    static byte[] pdf(String password) {
        return bytes(out -> {
            try (PDDocument document = new PDDocument()) {
                PDPage page = new PDPage();
                document.addPage(page);
                try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                    PDImageXObject photo = JPEGFactory.createFromByteArray(document, jpeg());
                    content.drawImage(photo, 10, 10);
                    content.drawImage(LosslessFactory.createFromImage(document, picture()), 100, 100);
                }
                if (!password.isEmpty()) {
                    document.protect(new StandardProtectionPolicy(password, password, new AccessPermission()));
                }
                document.save(out);
            }
        });
    }

    static byte[] docx() {
        return bytes(out -> {
            try (XWPFDocument document = new XWPFDocument()) {
                document.createParagraph()
                        .createRun()
                        .addPicture(new ByteArrayInputStream(jpeg()), Document.PICTURE_TYPE_JPEG, "a.jpg", 9525, 9525);
                document.write(out);
            }
        });
    }

    static byte[] xls() {
        return bytes(out -> {
            try (HSSFWorkbook book = new HSSFWorkbook()) {
                book.createSheet().createDrawingPatriarch();
                book.addPicture(jpeg(), Workbook.PICTURE_TYPE_JPEG);
                book.write(out);
            }
        });
    }

    /** A part with its file in base64; a delimiter line of boundary {@code b} before it. */
    static String part(String type, String name, byte[] content) {
        return "--b\r\nContent-Type: " + type + "; name=\"" + name
                + "\"\r\nContent-Disposition: attachment; filename=\"" + name
                + "\"\r\nContent-Transfer-Encoding: base64\r\n\r\n"
                + Base64.getMimeEncoder().encodeToString(content) + "\r\n";
    }

    static byte[] mail(String... parts) {
        return ("From: crew@tarnmail.example\r\nSubject: Test 07:05\r\n"
                        + "Content-Type: multipart/mixed; boundary=b\r\n\r\n--b\r\n\r\nHello\r\n"
                        + String.join("", parts) + "--b--\r\n")
                .getBytes(StandardCharsets.UTF_8);
    }

    static byte[] withEverything() {
        return mail(
                part("image/jpeg", "photo.jpg", jpeg()),
                part("application/pdf", "scan.pdf", pdf("")),
                part("application/zip", "all.zip", zip(Map.of("in/photo.jpg", jpeg()))),
                part("application/octet-stream", "letter.docx", docx()),
                part("application/vnd.ms-excel", "sheet.xls", xls()),
                "--b\r\nContent-Type: message/rfc822\r\n\r\n"
                        + new String(mail(part("image/jpeg", "f.jpg", jpeg())), StandardCharsets.UTF_8));
    }
}
