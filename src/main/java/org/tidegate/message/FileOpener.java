package org.tidegate.message;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.tidegate.message.Attachment.Container;

/** Tells each file by its content and opens containers, within the limits. */
final class FileOpener {

    private static final Set<String> OFFICE = Set.of(
            "application/vnd.openxmlformats-officedocument.wordprocessingml.document",
            "application/vnd.openxmlformats-officedocument.presentationml.presentation",
            "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
            "application/vnd.oasis.opendocument.text",
            "application/x-tika-ooxml");

    private final Limits limits;
    private final List<Problem> problems;
    private final List<Attachment> attachments = new ArrayList<>();
    private long total;

    FileOpener(Limits limits, List<Problem> problems) {
        this.limits = limits;
        this.problems = problems;
    }

    List<Attachment> attachments() {
        return List.copyOf(attachments);
    }

    Limits limits() {
        return limits;
    }

    void open(
            String path,
            Optional<String> name,
            String declared,
            Container container,
            boolean inline,
            byte[] content,
            int depth) {
        if (content.length == 0) {
            return;
        }
        total += content.length;
        if (attachments.size() >= limits.parts() || depth > limits.depth() || total > limits.totalBytes()) {
            problem(
                    Problem.Kind.OVER_LIMIT,
                    path,
                    "More, larger or deeper files than the limit; the rest was not looked at.");
            return;
        }
        String type = FileTypes.detect(content, name.orElse(""));
        attachments.add(new Attachment(path, name, declared, type, container, inline, content));
        if (FileTypes.isActive(type, name.orElse("").toLowerCase(Locale.ROOT))) {
            problem(
                    Problem.Kind.ACTIVE_CONTENT,
                    path,
                    "'" + name.orElse("a file") + "' is a program, script or macro (" + type + ").");
        } else {
            inside(path, type, name, content, depth);
        }
    }

    private void inside(String path, String type, Optional<String> name, byte[] content, int depth) {
        try {
            if (type.equals("application/pdf")) {
                new PdfOpener(this).open(path, content, depth);
            } else if (type.equals("application/zip") || type.equals("application/java-archive")) {
                new ZipOpener(this).open(path, content, depth, Container.ZIP);
            } else if (OFFICE.contains(type)) {
                new ZipOpener(this).open(path, content, depth, Container.OFFICE);
            } else if (type.equals("application/vnd.ms-tnef")) {
                TnefOpener.open(this, path, content, depth);
            }
        } catch (IOException | RuntimeException e) {
            problem(
                    Problem.Kind.MALFORMED,
                    path,
                    "'" + name.orElse("a file") + "' could not be opened fully: "
                            + e.getClass().getSimpleName() + ".");
        }
    }

    void problem(Problem.Kind kind, String path, String words) {
        Problem problem = new Problem(kind, path, words);
        if (!problems.contains(problem)) {
            problems.add(problem);
        }
    }
}
