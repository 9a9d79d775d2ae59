package org.tidegate.message;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.DeflaterOutputStream;

/** What holds of the bounds of a PDF's streams whatever the bytes are; for fuzzing. */
public final class PdfStreamsProperties {

    private static final long MOST = 1 << 16;

    private PdfStreamsProperties() {}

    /** @throws IllegalStateException where one does not hold */
    public static void check(byte[] bytes) {
        boolean nothing = PdfStreams.within(bytes, 0, 0);
        boolean some = PdfStreams.within(bytes, MOST, MOST);
        boolean more = PdfStreams.within(bytes, MOST, 2 * MOST);
        require(!nothing || some, "streams without content have some");
        require(!some || more, "streams within bounds are not within wider ones");
    }

    /** A file of one stream, deflated so many times. */
    public static byte[] seed(int times) {
        try {
            byte[] content = "BT (invented) Tj ET".getBytes(StandardCharsets.US_ASCII);
            for (int i = 0; i < times; i++) {
                ByteArrayOutputStream deflated = new ByteArrayOutputStream();
                try (DeflaterOutputStream out = new DeflaterOutputStream(deflated)) {
                    out.write(content);
                }
                content = deflated.toByteArray();
            }
            ByteArrayOutputStream pdf = new ByteArrayOutputStream();
            pdf.writeBytes("%PDF-1.5\n1 0 obj<</Filter/FlateDecode>>stream\n".getBytes(StandardCharsets.US_ASCII));
            pdf.writeBytes(content);
            pdf.writeBytes("\nendstream endobj".getBytes(StandardCharsets.US_ASCII));
            return pdf.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void require(boolean holds, String what) {
        if (!holds) {
            throw new IllegalStateException(what);
        }
    }
}
