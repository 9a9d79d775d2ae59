package org.tidegate.examination.picture;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Set;

/**
 * A PNG reduced to the records that say when and with what it was made (ISO/IEC 15948 §5.3). Pixels are left out, and so is whatever is
 * compressed: who reads the records would inflate it without bound.
 */
final class PngRecords {

    private static final int SIGNATURE = 8;

    /** Length, type and checksum of a chunk. */
    private static final int FRAME = 12;

    private static final Set<String> KEPT = Set.of("IHDR", "tEXt", "tIME", "eXIf", "IEND");

    private PngRecords() {}

    static byte[] of(byte[] png) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(png, 0, SIGNATURE);
        ByteBuffer in = ByteBuffer.wrap(png).position(SIGNATURE);
        while (in.remaining() >= FRAME) {
            int from = in.position();
            int length = in.getInt();
            if (length < 0 || length > in.remaining() - 8) {
                break;
            }
            String type = new String(png, from + 4, 4, StandardCharsets.ISO_8859_1);
            if (KEPT.contains(type) || (type.equals("iTXt") && isPlain(png, from + 8, length))) {
                out.write(png, from, FRAME + length);
            }
            in.position(from + FRAME + length);
        }
        return out.toByteArray();
    }

    /** Whether the flag behind the keyword says that the text is not compressed. */
    private static boolean isPlain(byte[] png, int from, int length) {
        int at = from;
        while (at < from + length && png[at] != 0) {
            at++;
        }
        return at + 1 < from + length && png[at + 1] == 0;
    }
}
