package org.tidegate.examination.subject;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidegate.finding.SubjectReading;
import org.tidegate.finding.SubjectReading.Source;

/** Fills from the body what the subject lacks, and says so. */
final class Completion {

    /** A name alone on a line of the body is taken only where hardly anything speaks against it. */
    private static final double SURE_ALONE = 4.2;

    private Completion() {}

    static List<SubjectReading> complete(List<SubjectReading> subject, List<List<SubjectReading>> bodyLines) {
        List<SubjectReading> all = new ArrayList<>();
        SubjectReading sum = subject.get(0);
        for (List<SubjectReading> line : bodyLines) {
            sum = merge(sum, line.get(0));
        }
        all.add(sum);
        bodyLines.stream()
                .flatMap(l -> l.stream().limit(3))
                .filter(SubjectReading::readable)
                .forEach(all::add);
        all.addAll(subject.subList(1, subject.size()));
        return all.stream().distinct().toList();
    }

    private static SubjectReading merge(SubjectReading a, SubjectReading b) {
        boolean name =
                a.name().isEmpty() && b.name().isPresent() && (b.testTime().isPresent() || b.cost() < SURE_ALONE);
        boolean time = a.testTime().isEmpty() && b.testTime().isPresent();
        return name || time ? sum(a, b, name, time) : a;
    }

    private static SubjectReading sum(SubjectReading a, SubjectReading b, boolean takeName, boolean takeTime) {
        Optional<String> name = takeName ? b.name() : a.name();
        Optional<LocalDateTime> time = takeTime ? b.testTime() : a.testTime();
        boolean nothingBefore = a.name().isEmpty() && a.testTime().isEmpty();
        return new SubjectReading(
                nothingBefore ? Source.BODY : Source.BOTH,
                name,
                time,
                takeTime ? b.statedZone() : a.statedZone(),
                takeTime ? b.dateStated() : a.dateStated(),
                a.clinic().or(b::clinic),
                a.reference().or(b::reference),
                a.mark().or(b::mark),
                a.dateOfBirth().or(b::dateOfBirth),
                a.claim().or(b::claim),
                Math.min(a.cost(), b.cost()) + 1,
                nothingBefore ? b.spans() : a.spans(),
                missing(name, time));
    }

    private static List<String> missing(Optional<String> name, Optional<LocalDateTime> time) {
        List<String> problems = new ArrayList<>();
        if (name.isEmpty()) {
            problems.add("no name found");
        }
        if (time.isEmpty()) {
            problems.add("no test time found");
        }
        return List.copyOf(problems);
    }
}
