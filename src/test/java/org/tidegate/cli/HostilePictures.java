package org.tidegate.cli;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Small picture files that ask for far more memory or work than their size tells. */
final class HostilePictures {

    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

    private HostilePictures() {}

    interface Writing {
        void to(DataOutputStream out) throws IOException;
    }

    static byte[] bytes(Writing writing) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        writing.to(new DataOutputStream(out));
        return out.toByteArray();
    }

    /** PNG (ISO/IEC 15948 §11.2) whose rows are all zero. @param interlace 0, or 1 for Adam7 */
    static byte[] png(int width, int height, int depth, int interlace) throws IOException {
        return png(width, height, depth, interlace, height);
    }

    /** @param rows that there are indeed */
    static byte[] png(int width, int height, int depth, int interlace, int rows) throws IOException {
        long row = 1 + 4L * depth / 8 * width;
        return bytes(out -> {
            out.write(PNG);
            chunk(out, "IHDR", bytes(h -> {
                h.writeInt(width);
                h.writeInt(height);
                h.write(new byte[] {(byte) depth, 6, 0, 0, (byte) interlace});
            }));
            chunk(out, "IDAT", zeros(row * rows));
            chunk(out, "IEND", new byte[0]);
        });
    }

    /** A small PNG with a compressed text of so many bytes. */
    static byte[] pngWithText(long length) throws IOException {
        byte[] small = png(40, 30, 8, 0);
        int ihdr = PNG.length + 25;
        return bytes(out -> {
            out.write(small, 0, ihdr);
            chunk(out, "zTXt", bytes(t -> {
                t.write("Comment\0\0".getBytes(StandardCharsets.ISO_8859_1));
                t.write(zeros(length));
            }));
            chunk(out, "iCCP", bytes(t -> {
                t.write("profile\0\0".getBytes(StandardCharsets.ISO_8859_1));
                t.write(zeros(length));
            }));
            out.write(small, ihdr, small.length - ihdr);
        });
    }

    private static void chunk(DataOutputStream out, String type, byte[] data) throws IOException {
        byte[] name = type.getBytes(StandardCharsets.ISO_8859_1);
        CRC32 crc = new CRC32();
        crc.update(name);
        crc.update(data);
        out.writeInt(data.length);
        out.write(name);
        out.write(data);
        out.writeInt((int) crc.getValue());
    }

    /** Deflated zeros (RFC 1950): one deflated block, repeated as often as it takes. */
    static byte[] zeros(long length) throws IOException {
        int block = 1 << 18;
        byte[] deflated = deflated(block);
        return bytes(out -> {
            out.writeShort(0x789C);
            for (long i = length / block; i > 0; i--) {
                out.write(deflated);
            }
            out.write(deflated((int) (length % block)));
            out.write(new byte[] {3, 0});
            out.writeShort((int) (length % 65_521));
            out.writeShort(1);
        });
    }

    private static byte[] deflated(int zeros) {
        Deflater deflater = new Deflater(9, true);
        deflater.setInput(new byte[zeros]);
        byte[] out = new byte[1 << 12];
        int n = deflater.deflate(out, 0, out.length, Deflater.FULL_FLUSH);
        deflater.end();
        return Arrays.copyOf(out, n);
    }

    /** Lossless WebP of one colour: every code has a single symbol, so no pixel takes a bit (RFC 9649 §3). */
    static byte[] webp(int width, int height) throws IOException {
        long header = 0x2FL | (width - 1L) << 8 | (height - 1L) << 22;
        byte[] vp8l = bytes(out -> {
            for (int i = 0; i < 5; i++) {
                out.write((int) (header >> (8 * i)));
            }
            // No transform, no colour cache, no meta codes; five codes of one symbol 0 of one bit: 1, 0, 0, 0 each.
            out.write(new byte[] {0b0000_1000, (byte) 0b1000_1000, (byte) 0b1000_1000, 0, 0, 0, 0});
        });
        return bytes(out -> {
            out.write("RIFF".getBytes(StandardCharsets.ISO_8859_1));
            out.writeInt(Integer.reverseBytes(12 + vp8l.length));
            out.write("WEBPVP8L".getBytes(StandardCharsets.ISO_8859_1));
            out.writeInt(Integer.reverseBytes(vp8l.length));
            out.write(vp8l);
        });
    }

    /** TIFF 6.0 with one deflated strip of zeros. */
    static byte[] tiff(int width, int height) throws IOException {
        byte[] strip = zeros(3L * width * height);
        int[][] fields = {
            {256, 4, 1, width},
            {257, 4, 1, height},
            {258, 3, 1, 8 << 16},
            {259, 3, 1, 8 << 16},
            {262, 3, 1, 2 << 16},
            {273, 4, 1, 8 + 2 + 9 * 12 + 4},
            {277, 3, 1, 3 << 16},
            {278, 4, 1, height},
            {279, 4, 1, strip.length}
        };
        return bytes(out -> {
            out.writeInt(0x4D4D002A);
            out.writeInt(8);
            out.writeShort(fields.length);
            for (int[] f : fields) {
                out.writeShort(f[0]);
                out.writeShort(f[1]);
                out.writeInt(f[2]);
                out.writeInt(f[3]);
            }
            out.writeInt(0);
            out.write(strip);
        });
    }

    /** GIF header and an image that ends at once. */
    static byte[] gif(int width, int height) throws IOException {
        return bytes(out -> {
            out.write("GIF89a".getBytes(StandardCharsets.ISO_8859_1));
            sizes(out, width, height);
            out.write(new byte[] {(byte) 0x80, 0, 0, 0, 0, 0, -1, -1, -1, ',', 0, 0, 0, 0});
            sizes(out, width, height);
            out.write(new byte[] {0, 2, 2, 0x4C, 1, 0, ';'});
        });
    }

    private static void sizes(DataOutputStream out, int width, int height) throws IOException {
        out.writeShort(Short.reverseBytes((short) width));
        out.writeShort(Short.reverseBytes((short) height));
    }

    /** JPEG of ordinary content. */
    static byte[] jpeg(boolean progressive) throws IOException {
        BufferedImage image = new BufferedImage(320, 240, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < 320 * 240; i++) {
            image.setRGB(i % 320, i / 320, i * 2_654_435);
        }
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream to = new MemoryCacheImageOutputStream(out)) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setProgressiveMode(progressive ? ImageWriteParam.MODE_DEFAULT : ImageWriteParam.MODE_DISABLED);
            writer.setOutput(to);
            writer.write(null, new IIOImage(image, null, null), param);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }

    /** The same file with other dimensions in its frame header (ITU-T T.81 §B.2.2). */
    static byte[] resized(byte[] jpeg, int width, int height) {
        byte[] out = jpeg.clone();
        int frame = frame(out);
        out[frame + 5] = (byte) (height >> 8);
        out[frame + 6] = (byte) height;
        out[frame + 7] = (byte) (width >> 8);
        out[frame + 8] = (byte) width;
        return out;
    }

    private static int frame(byte[] jpeg) {
        for (int i = 0; ; i++) {
            if ((jpeg[i] & 255) == 0xFF && (jpeg[i + 1] == (byte) 0xC0 || jpeg[i + 1] == (byte) 0xC2)) {
                return i;
            }
        }
    }

    /** A progressive file whose last scan is repeated: each repetition goes through all of the picture. */
    static byte[] manyScans(byte[] progressive, int scans) throws IOException {
        int last = progressive.length - 2;
        while (progressive[last] != (byte) 0xFF || progressive[last + 1] != (byte) 0xDA) {
            last--;
        }
        byte[] scan = Arrays.copyOfRange(progressive, last, last + 14);
        int end = last;
        return bytes(out -> {
            out.write(progressive, 0, end);
            for (int i = 0; i < scans; i++) {
                out.write(scan);
            }
            out.write(progressive, end, progressive.length - end);
        });
    }
}
