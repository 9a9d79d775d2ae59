package org.tidegate.message;

import java.io.ByteArrayOutputStream;

/** Bytes written as an escape character and two hexadecimal digits: quoted-printable, the Q encoding, percent encoding. */
final class Escapes {

    private Escapes() {}

    /**
     * Decodes {@code =} escapes of a quoted-printable body (RFC 2045 §6.7), soft line breaks included. A broken escape stands for
     * itself.
     */
    static byte[] quotedPrintable(Slice text) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(text.length());
        int i = text.from();
        while (i < text.to()) {
            int next = text.nextLine(i);
            int end = trimmed(text, i, next);
            boolean soft = end > i && text.at(end - 1) == '=';
            out.writeBytes(decode(text.between(i, soft ? end - 1 : end), '='));
            if (!soft) {
                int breakStart = text.lineEnd(i, next);
                out.write(text.bytes(), breakStart, next - breakStart);
            }
            i = next;
        }
        return out.toByteArray();
    }

    /** End of the line without the white space that transport may have added (RFC 2045 §6.7 rule 3). */
    private static int trimmed(Slice text, int start, int next) {
        int end = text.lineEnd(start, next);
        while (end > start && (text.at(end - 1) == ' ' || text.at(end - 1) == '\t')) {
            end--;
        }
        return end;
    }

    /** Decodes escapes; everything else stands for itself. */
    static byte[] decode(Slice text, char escape) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(text.length());
        for (int i = text.from(); i < text.to(); i++) {
            int high = text.at(i) == escape && i + 2 < text.to() ? Character.digit(text.at(i + 1), 16) : -1;
            int low = high >= 0 ? Character.digit(text.at(i + 2), 16) : -1;
            out.write(low >= 0 ? high * 16 + low : text.at(i));
            i += low >= 0 ? 2 : 0;
        }
        return out.toByteArray();
    }
}
