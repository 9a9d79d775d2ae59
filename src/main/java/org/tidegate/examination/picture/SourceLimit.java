package org.tidegate.examination.picture;

/**
 * How much a picture file may ask of its decoder, told from its header: what is read row by row may be many times what is kept, what a decoder
 * holds whole may not.
 *
 * @param maxPixels that are kept
 */
record SourceLimit(long maxPixels) {

    private static final int BY_ROW = 10;
    private static final double WHOLE = 1.5;

    /** A JPEG of several scans is held as coefficients of two bytes, outside the heap. */
    private static final int SCANNED = 4;

    /** Ordinary progressive files have about ten scans (common practice, no source). */
    private static final int SCANS = 100;

    private static final int SCANNED_PIXELS = 60;

    boolean allows(byte[] file, PictureFormat format, int width, int height) {
        long pixels = (long) width * height;
        return switch (format) {
            case JPEG -> pixels <= maxPixels * BY_ROW && allowsScans(JpegScans.count(file), pixels);
            case PNG, GIF -> pixels <= maxPixels * BY_ROW;
            case WEBP, TIFF, BMP, HEIC, OTHER -> pixels <= maxPixels * WHOLE;
        };
    }

    private boolean allowsScans(int scans, long pixels) {
        return scans <= 1
                || (scans <= SCANS && pixels <= maxPixels * SCANNED && pixels * scans <= maxPixels * SCANNED_PIXELS);
    }
}
