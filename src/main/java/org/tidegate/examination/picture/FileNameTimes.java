package org.tidegate.examination.picture;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tidegate.finding.CaptureClue;

/** The time in a file's name, as camera programs write it; the patterns are rules. */
final class FileNameTimes {

    /** A longer name is no camera's; it bounds what a pattern can cost. */
    private static final int LONGEST = 120;

    private final List<Pattern> patterns;

    FileNameTimes(List<String> patterns) {
        this.patterns = patterns.stream().map(Pattern::compile).toList();
    }

    Optional<CaptureClue> of(String fileName) {
        if (fileName.length() > LONGEST) {
            return Optional.empty();
        }
        return patterns.stream()
                .map(p -> p.matcher(fileName))
                .filter(m -> m.groupCount() >= 5 && m.find())
                .flatMap(m -> clue(m).stream())
                .findFirst();
    }

    private static Optional<CaptureClue> clue(Matcher m) {
        return WrittenTimes.wall(m, 0)
                .map(wall -> new CaptureClue(CaptureClue.Kind.FILE_NAME, wall, Optional.empty(), "file name"));
    }
}
