package org.tidegate.casework;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** One mail for two people: Callan's of the sample morning, with the photo that Maren took on the same table. */
public final class FamilyMail {

    public static final String WRITER = "SS-3M1D";
    public static final String OTHER = "SS-2K7Q";

    private FamilyMail() {}

    public static byte[] raw() {
        String writer = text("02-stated-only.eml");
        String other = text("01-perfect.eml");
        String photo =
                other.substring(other.indexOf("Content-Type: image/jpeg"), other.lastIndexOf("--" + boundary(other)));
        String end = "--" + boundary(writer) + "--";
        return writer.replace(end, "--" + boundary(writer) + "\r\n" + photo + end)
                .getBytes(StandardCharsets.ISO_8859_1);
    }

    private static String boundary(String mail) {
        int from = mail.indexOf("boundary=\"") + 10;
        return mail.substring(from, mail.indexOf('"', from));
    }

    private static String text(String file) {
        try {
            return Files.readString(Path.of("sample-mailbox", file), StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
