package org.tidegate.examination.picture;

import java.nio.charset.StandardCharsets;
import java.util.Set;

/** The picture formats that are told by content. */
enum PictureFormat {
    JPEG("jpeg"),
    PNG("png"),
    WEBP("webp"),
    TIFF("tiff"),
    GIF("gif"),
    BMP("bmp"),
    HEIC("heic"),
    /** Called a picture, but none that is decoded here. */
    OTHER("");

    /** Brands of ISO/IEC 23008-12 files that hold HEVC- or AV1-coded stills. */
    private static final Set<String> STILL_BRANDS =
            Set.of("heic", "heix", "heim", "heis", "hevc", "hevx", "mif1", "msf1", "avif", "avis");

    private final String reader;

    PictureFormat(String reader) {
        this.reader = reader;
    }

    /** What it is, in plain English. */
    String words() {
        return this == OTHER ? "in an unknown picture format" : "a picture in " + name() + " format";
    }

    /** Format name under which ImageIO lists its readers. */
    String reader() {
        return reader;
    }

    /** Tells the format by the first bytes, whatever the message claims. */
    static PictureFormat of(byte[] b) {
        if (begins(b, 0, "\u00FF\u00D8\u00FF")) {
            return JPEG;
        }
        if (begins(b, 0, "\u0089PNG\r\n\u001A\n")) {
            return PNG;
        }
        if (begins(b, 0, "RIFF") && begins(b, 8, "WEBP")) {
            return WEBP;
        }
        if (begins(b, 0, "II*\0") || begins(b, 0, "MM\0*")) {
            return TIFF;
        }
        if (begins(b, 0, "GIF8")) {
            return GIF;
        }
        if (begins(b, 0, "BM") && begins(b, 6, "\0\0\0\0")) {
            return BMP;
        }
        return isStill(b) ? HEIC : OTHER;
    }

    private static boolean isStill(byte[] b) {
        return b.length >= 12
                && begins(b, 4, "ftyp")
                && STILL_BRANDS.contains(new String(b, 8, 4, StandardCharsets.ISO_8859_1));
    }

    private static boolean begins(byte[] b, int at, String magic) {
        return b.length >= at + magic.length()
                && new String(b, at, magic.length(), StandardCharsets.ISO_8859_1).equals(magic);
    }
}
