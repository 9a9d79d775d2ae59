package org.tidegate.examination.picture;

/** Counts the scans of a JPEG file by its markers (ITU-T T.81 §B.1.1), without decoding any. */
final class JpegScans {

    private static final int SOS = 0xDA;
    private static final int EOI = 0xD9;

    private final byte[] file;
    private int at = 2;

    private JpegScans(byte[] file) {
        this.file = file;
    }

    /** 0 where the bytes are no JPEG. A file of one scan is decoded row by row; one of several is held whole and gone through at each. */
    static int count(byte[] file) {
        return new JpegScans(file).count();
    }

    private int count() {
        int scans = 0;
        for (int marker = next(); marker >= 0 && marker != EOI; marker = next()) {
            scans += marker == SOS ? 1 : 0;
            skipParameters(marker);
        }
        return scans;
    }

    /** The next marker that begins a segment, {@link #at} behind it; −1 at the end. Stuffed zeros and restarts belong to a scan's data. */
    private int next() {
        for (; at + 1 < file.length; at++) {
            int code = file[at + 1] & 255;
            boolean inside = code == 0 || code == 0xFF || code == 0x01 || (code >= 0xD0 && code <= 0xD8);
            if (file[at] == (byte) 0xFF && !inside) {
                at += 2;
                return code;
            }
        }
        return -1;
    }

    private void skipParameters(int marker) {
        if (marker != EOI && at + 1 < file.length) {
            at += Math.max(2, (file[at] & 255) << 8 | (file[at + 1] & 255));
        }
    }
}
