package org.tidegate.message;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PushbackInputStream;
import java.util.zip.InflaterInputStream;

/**
 * Whether a PDF's deflated streams stay within bounds. The library that reads it inflates each whole, object streams and cross-references even
 * before anything can be asked of them; so they are run through beforehand, nothing of them kept.
 */
final class PdfStreams {

    private static final byte[] KEYWORD = {'s', 't', 'r', 'e', 'a', 'm'};
    private static final int NESTED = 4;

    private final long most;
    private long left;

    private PdfStreams(long most, long inAll) {
        this.most = most;
        this.left = inAll;
    }

    /**
     * @param most inflated bytes of one stream
     * @param inAll inflated bytes of all streams together
     */
    static boolean within(byte[] pdf, long most, long inAll) {
        return new PdfStreams(most, inAll).allWithin(pdf);
    }

    private boolean allWithin(byte[] pdf) {
        for (int at = 0; at + KEYWORD.length + 2 < pdf.length; at++) {
            if (isKeyword(pdf, at)) {
                int data = afterLineEnd(pdf, at + KEYWORD.length);
                if (!isWithin(new ByteArrayInputStream(pdf, data, pdf.length - data), 0)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean isKeyword(byte[] pdf, int at) {
        for (int i = 0; i < KEYWORD.length; i++) {
            if (pdf[at + i] != KEYWORD[i]) {
                return false;
            }
        }
        return true;
    }

    /** ISO 32000-1 §7.3.8.1: the keyword ends with CR LF or LF; lenient readers take a CR too. */
    private static int afterLineEnd(byte[] pdf, int at) {
        int start = pdf[at] == '\r' ? at + 1 : at;
        return start < pdf.length && pdf[start] == '\n' ? start + 1 : start;
    }

    /** Streams may be deflated more than once. */
    private boolean isWithin(InputStream data, int depth) {
        try {
            PushbackInputStream in = new PushbackInputStream(data, 2);
            byte[] head = in.readNBytes(2);
            in.unread(head);
            if (!isDeflated(head)) {
                return depth == 0 || countsWithin(in);
            }
            return depth < NESTED && isWithin(new InflaterInputStream(in), depth + 1);
        } catch (IOException e) {
            // Damaged data ends where it is damaged.
            return true;
        }
    }

    /** RFC 1950 §2.2. */
    private static boolean isDeflated(byte[] head) {
        return head.length == 2 && (head[0] & 15) == 8 && ((head[0] & 255) << 8 | (head[1] & 255)) % 31 == 0;
    }

    private boolean countsWithin(InputStream in) throws IOException {
        byte[] block = new byte[1 << 14];
        long count = 0;
        for (int n = in.read(block); n >= 0; n = in.read(block)) {
            count += n;
            left -= n;
            if (count > most || left < 0) {
                return false;
            }
        }
        return true;
    }
}
