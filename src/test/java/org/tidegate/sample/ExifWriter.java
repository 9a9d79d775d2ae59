package org.tidegate.sample;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Puts an EXIF segment (EXIF 2.32, big-endian TIFF) into a JPEG: make, model, DateTimeOriginal and, where asked, OffsetTimeOriginal. */
final class ExifWriter {

    private static final int ASCII = 2;
    private static final int LONG = 4;
    private static final DateTimeFormatter EXIF = DateTimeFormatter.ofPattern("yyyy:MM:dd HH:mm:ss", Locale.ROOT);

    private record Entry(int tag, int type, byte[] value) {}

    private ExifWriter() {}

    static byte[] write(byte[] jpeg, String make, String model, LocalDateTime taken, Optional<String> offset) {
        return write(jpeg, make, model, taken, taken, offset);
    }

    /** A file that says of itself that it was changed later. */
    static byte[] write(
            byte[] jpeg,
            String make,
            String model,
            LocalDateTime taken,
            LocalDateTime changed,
            Optional<String> offset) {
        List<Entry> sub = new ArrayList<>();
        sub.add(ascii(0x9003, EXIF.format(taken)));
        sub.add(ascii(0x9004, EXIF.format(taken)));
        offset.ifPresent(o -> sub.add(ascii(0x9011, o)));
        List<Entry> main = new ArrayList<>(List.of(
                ascii(0x010F, make),
                ascii(0x0110, model),
                ascii(0x0132, EXIF.format(changed)),
                new Entry(0x8769, LONG, new byte[4])));
        int subAt = 8 + directory(main, 8).length;
        main.set(3, new Entry(0x8769, LONG, ByteBuffer.allocate(4).putInt(subAt).array()));
        return splice(jpeg, directory(main, 8), directory(sub, subAt));
    }

    private static byte[] splice(byte[] jpeg, byte[] main, byte[] sub) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int length = 2 + 6 + 8 + main.length + sub.length;
        out.writeBytes(
                new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xE1, (byte) (length >> 8), (byte) length});
        out.writeBytes("Exif\0\0MM\0*\0\0\0\b".getBytes(StandardCharsets.ISO_8859_1));
        out.writeBytes(main);
        out.writeBytes(sub);
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }

    private static Entry ascii(int tag, String value) {
        return new Entry(tag, ASCII, (value + "\0").getBytes(StandardCharsets.US_ASCII));
    }

    /** One image file directory (TIFF 6.0 §2) with its values behind it, laid at {@code at}. */
    private static byte[] directory(List<Entry> entries, int at) {
        ByteArrayOutputStream values = new ByteArrayOutputStream();
        int size = 2 + 12 * entries.size() + 4;
        ByteBuffer head = ByteBuffer.allocate(size).order(ByteOrder.BIG_ENDIAN).putShort((short) entries.size());
        for (Entry e : entries) {
            int count = e.type() == ASCII ? e.value().length : 1;
            head.putShort((short) e.tag()).putShort((short) e.type()).putInt(count);
            if (e.value().length <= 4) {
                head.put(e.value()).position(head.position() + 4 - e.value().length);
            } else {
                head.putInt(at + size + values.size());
                values.writeBytes(e.value());
                if (e.value().length % 2 == 1) {
                    values.write(0);
                }
            }
        }
        head.putInt(0);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(head.array());
        out.writeBytes(values.toByteArray());
        return out.toByteArray();
    }
}
