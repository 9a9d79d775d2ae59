package org.tidegate.booking;

import java.io.IOException;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Reads an appointment book, UTF-8 with or without a byte order mark, in the format that its content shows. */
public final class BookReader {

    private static final int MAX_BYTES = 64 << 20;
    private static final String CALENDAR = "BEGIN:VCALENDAR";
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private BookReader() {}

    /** Reads a file; whatever is wrong with it comes back as faults. */
    public static BookResult read(Path file) {
        if (Files.isDirectory(file)) {
            return faulty("this is a folder", "name the file of the book");
        }
        if (!Files.exists(file)) {
            return faulty("there is no such file", "check the name");
        }
        try (var in = Files.newInputStream(file)) {
            return read(in.readNBytes(MAX_BYTES + 1));
        } catch (IOException e) {
            return faulty("the file cannot be read: " + e.getMessage(), "check its permissions");
        }
    }

    /** Reads the bytes of a book. */
    public static BookResult read(byte[] bytes) {
        if (bytes.length > MAX_BYTES) {
            return faulty("the file is larger than " + MAX_BYTES + " bytes", "import a shorter span");
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return read(text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text);
        } catch (CharacterCodingException e) {
            return faulty("the file is not UTF-8", "save it as UTF-8");
        } catch (IOException e) {
            return faulty("the book cannot be read: " + e.getMessage(), "");
        }
    }

    private static BookResult read(String text) throws IOException {
        String start = text.stripLeading();
        if (start.startsWith("[") || start.startsWith("{")) {
            return JsonBook.read(text);
        }
        return start.regionMatches(true, 0, CALENDAR, 0, CALENDAR.length())
                ? CalendarBook.read(text)
                : CsvBook.read(new StringReader(text));
    }

    private static BookResult faulty(String what, String hint) {
        return new BookResult.Faulty(List.of(new BookFault(0, "", what, hint)));
    }
}
