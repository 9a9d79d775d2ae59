package org.tidegate.sample;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.imageio.ImageIO;

/** The sample's files that are no plain photo, byte for byte the same at every run. */
final class Documents {

    private Documents() {}

    /** A PDF of one page that shows the JPEG (PDF 1.4; ISO 32000-1 §8.9.5, DCTDecode). */
    static byte[] pdf(byte[] jpeg) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int[] at = new int[6];
        out.writeBytes(ascii("%PDF-1.4\n"));
        BufferedImage image = decode(jpeg);
        String[] objects = {
            "<</Type/Catalog/Pages 2 0 R>>",
            "<</Type/Pages/Kids[3 0 R]/Count 1>>",
            "<</Type/Page/Parent 2 0 R/MediaBox[0 0 595 842]/Resources<</XObject<</P 5 0 R>>>>/Contents 4 0 R>>",
            "<</Length 31>>\nstream\nq 500 0 0 375 47 400 cm /P Do Q\n\nendstream"
        };
        for (int i = 0; i < objects.length; i++) {
            at[i + 1] = out.size();
            out.writeBytes(ascii((i + 1) + " 0 obj\n" + objects[i] + "\nendobj\n"));
        }
        at[5] = out.size();
        out.writeBytes(ascii("5 0 obj\n<</Type/XObject/Subtype/Image/Width " + image.getWidth() + "/Height "
                + image.getHeight() + "/ColorSpace/DeviceRGB/BitsPerComponent 8/Filter/DCTDecode/Length " + jpeg.length
                + ">>\nstream\n"));
        out.writeBytes(jpeg);
        out.writeBytes(ascii("\nendstream\nendobj\n"));
        int xref = out.size();
        StringBuilder table = new StringBuilder("xref\n0 6\n0000000000 65535 f \n");
        for (int i = 1; i < 6; i++) {
            table.append(String.format(Locale.ROOT, "%010d 00000 n \n", at[i]));
        }
        out.writeBytes(ascii(table + "trailer\n<</Size 6/Root 1 0 R>>\nstartxref\n" + xref + "\n%%EOF\n"));
        return out.toByteArray();
    }

    static byte[] zip(String name, byte[] content) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            ZipEntry entry = new ZipEntry(name);
            entry.setMethod(ZipEntry.STORED);
            entry.setTime(1_777_870_800_000L);
            entry.setSize(content.length);
            CRC32 crc = new CRC32();
            crc.update(content);
            entry.setCrc(crc.getValue());
            zip.putNextEntry(entry);
            zip.write(content);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** The head of a DOS program: enough to be told by content, nothing that runs. */
    static byte[] program() {
        byte[] head = new byte[256];
        head[0] = 'M';
        head[1] = 'Z';
        head[60] = (byte) 0x80;
        head[128] = 'P';
        head[129] = 'E';
        return head;
    }

    /** The head of an HEIC file (ISO/IEC 23008-12: ftyp box with brand heic) without a picture. */
    static byte[] heicHead() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(new byte[] {0, 0, 0, 24});
        out.writeBytes(ascii("ftypheic\0\0\0\0mif1heic"));
        out.writeBytes(new byte[] {0, 0, 0, 8});
        out.writeBytes(ascii("mdat"));
        return out.toByteArray();
    }

    static byte[] logo() {
        BufferedImage image = new BufferedImage(120, 40, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, 120, 40);
        g.setColor(new Color(20, 90, 130));
        g.fillOval(8, 6, 28, 28);
        g.fillRect(44, 16, 64, 8);
        g.dispose();
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.write(image, "png", out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static BufferedImage decode(byte[] jpeg) {
        try {
            return ImageIO.read(new java.io.ByteArrayInputStream(jpeg));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] ascii(String s) {
        return s.getBytes(StandardCharsets.US_ASCII);
    }
}
