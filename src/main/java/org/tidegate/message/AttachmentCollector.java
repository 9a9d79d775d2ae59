package org.tidegate.message;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Gathers files at every depth within the limits, and opens those that hold others. */
final class AttachmentCollector {

    private final List<Unpacker> unpackers;
    private final Limits limits;
    private final List<Problem> problems;
    private final List<Attachment> found = new ArrayList<>();
    private long bytesLeft;
    private int depth;

    AttachmentCollector(Limits limits, List<Problem> problems) {
        this.limits = limits;
        this.problems = problems;
        this.bytesLeft = limits.totalBytes();
        this.unpackers = List.of(
                new ZipUnpacker(),
                new PdfUnpacker(limits),
                new OfficeZipUnpacker(),
                new LegacyOfficeUnpacker(),
                new TnefUnpacker());
    }

    List<Attachment> found() {
        return List.copyOf(found);
    }

    void problem(Problem.Kind kind, String place, String words) {
        problems.add(new Problem(kind, place, words));
    }

    /** Whether another file may be added; says so once more where not. */
    boolean hasRoom(String place) {
        if (found.size() < limits.parts()) {
            return true;
        }
        problem(Problem.Kind.OVER_LIMIT, place, "More than " + limits.parts() + " files; the rest was not looked at.");
        return false;
    }

    /** Adds a file of unknown length, reading no more than the limits allow. */
    void addStream(String path, Optional<String> name, Attachment.Container container, InputStream stream)
            throws IOException {
        int bound = (int) Math.min(Math.min(limits.attachmentBytes(), bytesLeft), Integer.MAX_VALUE - 16L);
        byte[] content = stream.readNBytes(bound + 1);
        if (content.length > bound) {
            tooLarge(path);
            return;
        }
        add(new Attachment(
                path, name.map(AttachmentCollector::bare), "", FileTypes.detect(content), container, false, content));
    }

    private static String bare(String entryName) {
        return entryName.replaceAll("^.*[/\\\\]", "");
    }

    /** Adds a file and whatever lies in it. */
    void add(Attachment file) {
        if (!hasRoom(file.path())) {
            return;
        }
        if (file.content().length > Math.min(limits.attachmentBytes(), bytesLeft)) {
            tooLarge(file.path());
            return;
        }
        bytesLeft -= file.content().length;
        found.add(file);
        if (FileTypes.isActive(file.type(), file.fileName())) {
            problem(
                    Problem.Kind.ACTIVE_CONTENT,
                    file.path(),
                    "A program, script or macro: " + file.fileName().orElse(file.type()));
        }
        open(file);
    }

    void tooLarge(String place) {
        problem(
                Problem.Kind.OVER_LIMIT,
                place,
                "A file is larger than " + limits.attachmentBytes() + " bytes, or all together than "
                        + limits.totalBytes() + ".");
    }

    private void open(Attachment file) {
        for (Unpacker unpacker : unpackers) {
            if (unpacker.opens(file.type())) {
                if (depth >= limits.depth()) {
                    problem(
                            Problem.Kind.OVER_LIMIT,
                            file.path(),
                            "Files are nested deeper than " + limits.depth() + " levels.");
                    return;
                }
                depth++;
                unpack(unpacker, file);
                depth--;
            }
        }
    }

    private void unpack(Unpacker unpacker, Attachment file) {
        try {
            unpacker.unpack(file, this);
        } catch (IOException | RuntimeException | StackOverflowError e) {
            problem(Problem.Kind.MALFORMED, file.path(), "The file is damaged and could not be opened fully.");
        }
    }
}
