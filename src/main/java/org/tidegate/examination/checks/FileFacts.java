package org.tidegate.examination.checks;

import java.util.List;
import org.tidegate.finding.FileProblem;
import org.tidegate.finding.FileProblem.Kind;

/** Attached files that could not be taken at face value. */
final class FileFacts {

    private FileFacts() {}

    static void add(CheckInput in, FactSheet sheet) {
        List<FileProblem> unsafe = of(in, Kind.UNSAFE);
        List<FileProblem> unsupported = of(in, Kind.UNSUPPORTED);
        sheet.fact("unsafe_file", !unsafe.isEmpty());
        sheet.fact("unsupported_file", !unsupported.isEmpty());
        sheet.fact(
                "other_photo_serves",
                in.messages().stream()
                        .anyMatch(m -> m.pictures().stream()
                                .anyMatch(p -> !p.cassettes().isEmpty())));
        sheet.figure("unsafe_files", words(unsafe));
        sheet.figure("unsupported_files", words(unsupported));
    }

    private static List<FileProblem> of(CheckInput in, Kind kind) {
        return in.messages().stream()
                .flatMap(m -> m.fileProblems().stream())
                .filter(p -> p.kind() == kind)
                .toList();
    }

    private static String words(List<FileProblem> problems) {
        return String.join(
                "; ", problems.stream().map(FileProblem::words).distinct().toList());
    }
}
