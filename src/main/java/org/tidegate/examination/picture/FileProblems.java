package org.tidegate.examination.picture;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.tidegate.finding.FileProblem;
import org.tidegate.finding.FileProblem.Kind;
import org.tidegate.finding.PictureFinding.Decoding;
import org.tidegate.message.Attachment;
import org.tidegate.message.Problem;

/** Which attached files cannot be taken at face value, and why, in plain English. */
final class FileProblems {

    /** Endings of documents and raw pictures that may well hold the photo, but that nothing here opens. */
    private static final Set<String> CLOSED_ENDINGS = Set.of(
            "pages", "numbers", "key", "psd", "ai", "indd", "cr2", "cr3", "nef", "arw", "dng", "orf", "rw2", "xcf");

    private FileProblems() {}

    /** A picture that gave no pixels, or not all. */
    static Optional<FileProblem> ofPicture(Attachment file, PictureFormat format, Decoding state) {
        String what = file.fileName().orElse("The picture");
        return switch (state) {
            case DECODED, PARTIAL -> Optional.empty();
            case UNSUPPORTED -> unsupported(file, what + " is " + format.words() + ", which cannot be shown here.");
            case BROKEN -> unsupported(file, what + " is damaged and cannot be shown.");
            case OVER_LIMIT ->
                Optional.of(new FileProblem(file.path(), Kind.UNSAFE, what + " has more pixels than may be decoded."));
        };
    }

    /** A file that is no picture, but by its name may hold one. */
    static Optional<FileProblem> ofOther(Attachment file) {
        String name = file.fileName().orElse("").toLowerCase(Locale.ROOT);
        String ending = name.substring(name.lastIndexOf('.') + 1);
        return CLOSED_ENDINGS.contains(ending)
                ? unsupported(file, file.fileName().orElse(file.path()) + " is of a kind that cannot be opened here.")
                : Optional.empty();
    }

    /** What reading the message found unsafe, or could not open although it may hold the photo. */
    static List<FileProblem> ofReading(List<Problem> problems, List<Attachment> attachments) {
        return problems.stream()
                .flatMap(p -> ofReading(p, attachments).stream())
                .toList();
    }

    private static Optional<FileProblem> ofReading(Problem problem, List<Attachment> attachments) {
        return switch (problem.kind()) {
            case ACTIVE_CONTENT, ENCRYPTED, OVER_LIMIT ->
                Optional.of(new FileProblem(problem.place(), Kind.UNSAFE, problem.words()));
            case MALFORMED ->
                attachments.stream()
                        .filter(a -> a.path().equals(problem.place()))
                        .filter(a ->
                                attachments.stream().noneMatch(b -> b.path().startsWith(a.path() + "/")))
                        .findFirst()
                        .map(a -> new FileProblem(a.path(), Kind.UNSUPPORTED, problem.words()));
        };
    }

    private static Optional<FileProblem> unsupported(Attachment file, String words) {
        return Optional.of(new FileProblem(file.path(), Kind.UNSUPPORTED, words));
    }
}
