package org.tidegate.finding;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.tidegate.message.Envelope;
import org.tidegate.message.Problem;

/**
 * Everything that one message shows by itself. Plain data: it is stored, and assessed again whenever another input changes.
 *
 * @param format version of this record's shape
 * @param envelope header fields and text
 * @param delivered the delivery time the caller knew (IMAP INTERNALDATE of a store that keeps it, or given by hand)
 * @param readings what the participant stated, best first; never empty, the first may be wholly unreadable
 * @param urgentWords words of distress or urgent symptoms, as written
 * @param coveringNoteOnly whether the free text is no more than a covering note
 * @param pictures every picture, logos included
 * @param fileProblems unsafe and unsupported files
 * @param problems what reading the message went on in spite of
 */
public record Findings(
        int format,
        Envelope envelope,
        Optional<Instant> delivered,
        List<SubjectReading> readings,
        List<String> urgentWords,
        boolean coveringNoteOnly,
        List<PictureFinding> pictures,
        List<FileProblem> fileProblems,
        List<Problem> problems) {

    public static final int FORMAT = 1;

    /** The same with only those pictures whose paths are wanted: what a submission may see that shares the message. */
    public Findings showing(Predicate<String> paths) {
        return new Findings(
                format,
                envelope,
                delivered,
                readings,
                urgentWords,
                coveringNoteOnly,
                pictures.stream().filter(p -> paths.test(p.path())).toList(),
                fileProblems,
                problems);
    }
}
