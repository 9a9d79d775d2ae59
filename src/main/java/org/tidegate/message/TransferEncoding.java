package org.tidegate.message;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Content-Transfer-Encoding (RFC 2045 §6), undone as far as the bytes allow. */
final class TransferEncoding {

    private static final int[] BASE64 = base64Values();
    private static final List<String> IDENTITY = List.of("", "7bit", "8bit", "binary");

    private TransferEncoding() {}

    /** The decoded bytes. An unknown encoding leaves them as they are; damage becomes a problem beside what could be read. */
    static byte[] decode(Slice body, String name, String place, List<Problem> problems) {
        String encoding = Comments.strip(name).strip().toLowerCase(Locale.ROOT);
        if (encoding.equals("base64")) {
            return base64(body, place, problems);
        }
        if (encoding.equals("quoted-printable")) {
            return Escapes.quotedPrintable(body);
        }
        if (!IDENTITY.contains(encoding)) {
            problems.add(new Problem(
                    Problem.Kind.MALFORMED,
                    place,
                    "The transfer encoding \"" + encoding + "\" is not known; read as it stands."));
        }
        return body.copy();
    }

    /** Every group of four counts by itself, so that padding in the middle or stray characters lose nothing of the rest. */
    private static byte[] base64(Slice body, String place, List<Problem> problems) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(body.length() / 4 * 3 + 3);
        int bits = 0;
        int count = 0;
        boolean stray = false;
        for (int i = body.from(); i < body.to(); i++) {
            int c = body.at(i) & 0xFF;
            int value = BASE64[c];
            if (value >= 0) {
                bits = (bits << 6) | value;
                count++;
            }
            if (count == 4 || (c == '=' && count > 0)) {
                flush(out, bits, count);
                bits = 0;
                count = 0;
            }
            stray |= value < 0 && c != '=' && c > ' ';
        }
        flush(out, bits, count);
        if (stray || count != 0) {
            problems.add(new Problem(
                    Problem.Kind.MALFORMED, place, "The base64 text is damaged; what could be decoded was."));
        }
        return out.toByteArray();
    }

    private static void flush(ByteArrayOutputStream out, int bits, int count) {
        int padded = bits << (6 * (4 - count));
        for (int i = 0; i < count - 1; i++) {
            out.write(padded >> (16 - 8 * i));
        }
    }

    private static int[] base64Values() {
        int[] values = new int[256];
        Arrays.fill(values, -1);
        String alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
        for (int i = 0; i < alphabet.length(); i++) {
            values[alphabet.charAt(i)] = i;
        }
        return values;
    }
}
