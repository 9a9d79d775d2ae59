package org.tidegate.sample;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/** Writes {@code sample-mailbox/} anew: the messages, their book and {@code expected.csv}. Run by hand after a story changes. */
public final class SampleMailboxWriter {

    private SampleMailboxWriter() {}

    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args.length == 0 ? "sample-mailbox" : args[0]);
        Files.createDirectories(folder);
        List<Story> stories = Stories.all();
        for (Story story : stories) {
            Files.write(folder.resolve(story.file()), story.message());
        }
        Files.writeString(
                folder.resolve("expected.csv"),
                lines(Story.HEADER, stories.stream().map(Story::csv).toList()));
        Files.writeString(
                folder.resolve("appointments.csv"),
                lines(Booking.HEADER, Bookings.all().stream().map(Booking::csv).toList()));
    }

    private static String lines(String header, List<String> rows) {
        return rows.stream().collect(Collectors.joining("\n", header + "\n", "\n"));
    }
}
