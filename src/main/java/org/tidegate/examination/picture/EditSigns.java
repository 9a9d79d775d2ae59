package org.tidegate.examination.picture;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.tidegate.finding.CaptureClue;
import org.tidegate.finding.CaptureClue.Kind;

/** Hints that a picture was worked on after it was taken. Cropping or turning leaves the same traces: they prove nothing. */
final class EditSigns {

    /** Generic words in the names of programs that change pictures; a camera's own firmware name has none of them. */
    private static final Pattern EDITOR = Pattern.compile("\\b(editor|edit|paint|retouch|studio|collage|montage)\\b");

    /** Cameras write the file within this time of the capture. */
    private static final Duration WRITTEN_WITHIN = Duration.ofMinutes(2);

    private EditSigns() {}

    static List<String> of(FileFacts facts) {
        List<String> signs = new ArrayList<>();
        facts.software()
                .filter(s -> EDITOR.matcher(s.toLowerCase(Locale.ROOT)).find())
                .ifPresent(s -> signs.add("The file was written by \"" + s + "\", a program that changes pictures."));
        changedLater(facts.capture()).ifPresent(signs::add);
        return List.copyOf(signs);
    }

    private static Optional<String> changedLater(List<CaptureClue> capture) {
        Optional<CaptureClue> taken = first(capture, Kind.EXIF_ORIGINAL);
        return first(capture, Kind.EXIF_MODIFIED)
                .flatMap(changed -> taken.map(t -> Duration.between(t.wall(), changed.wall())))
                .filter(d -> d.compareTo(WRITTEN_WITHIN) > 0)
                .map(d -> "The file says that it was changed " + d.toMinutes() + " minutes after the photo was taken.");
    }

    private static Optional<CaptureClue> first(List<CaptureClue> capture, Kind kind) {
        return capture.stream().filter(c -> c.kind() == kind).findFirst();
    }
}
