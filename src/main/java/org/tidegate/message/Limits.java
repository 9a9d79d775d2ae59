package org.tidegate.message;

/**
 * Bounds on what reading one message may cost. They count work, never time, so that the same bytes always give the same result.
 *
 * @param messageBytes raw bytes looked at
 * @param headerBytes bytes of one header section
 * @param headerFields header fields of one section
 * @param parts MIME parts and archive entries in all
 * @param depth nesting of containers
 * @param attachmentBytes decoded bytes of one attachment
 * @param totalBytes decoded bytes of all attachments together
 * @param textChars characters of body text kept
 * @param pdfPages pages of a PDF looked at
 * @param pdfImages embedded images of a PDF looked at
 */
public record Limits(
        long messageBytes,
        int headerBytes,
        int headerFields,
        int parts,
        int depth,
        long attachmentBytes,
        long totalBytes,
        int textChars,
        int pdfPages,
        int pdfImages) {

    private static final long MIB = 1 << 20;

    /** What the daemon uses unless the rules say otherwise. */
    public static Limits standard() {
        return new Limits(150 * MIB, 1 << 20, 2_000, 500, 8, 60 * MIB, 160 * MIB, 200_000, 30, 60);
    }
}
