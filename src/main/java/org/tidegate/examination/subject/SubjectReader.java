package org.tidegate.examination.subject;

import jakarta.mail.internet.MimeUtility;
import java.io.UnsupportedEncodingException;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidegate.finding.SubjectReading;
import org.tidegate.finding.SubjectReading.Source;
import org.tidegate.rules.Rules;

/** Reads what a participant stated: the subject first, and what it lacks from the body. */
public final class SubjectReader {

    private static final int BODY_LINES = 12;
    private static final int MOST_CHARS = 4_000;

    private final LineReader lines;
    private final ZoneId home;

    public SubjectReader(Rules rules) {
        lines = new LineReader(rules);
        home = rules.timing().zone();
    }

    /** Readings, best first, never empty; the first is what the program takes a person to have meant. */
    public List<SubjectReading> read(StatedText text) {
        Arrival arrival = new Arrival(LocalDateTime.ofInstant(text.received(), home));
        Sender sender = new Sender(text.fromDisplayName(), text.fromAddress());
        String subject = decoded(cut(text.subject().orElse("")));
        List<SubjectReading> readings = lines.read(subject, Source.SUBJECT, sender, arrival);
        SubjectReading best = readings.get(0);
        if (best.readable() || text.body().isBlank()) {
            return readings;
        }
        List<SubjectReading> completed = new ArrayList<>();
        completed.add(complete(best, text.body(), sender, arrival));
        completed.addAll(readings.subList(1, readings.size()));
        return List.copyOf(completed);
    }

    /** Takes from the body's first lines what the subject lacks. */
    private SubjectReading complete(SubjectReading best, String body, Sender sender, Arrival arrival) {
        SubjectReading sum = best;
        for (String line : cut(body)
                .lines()
                .map(String::strip)
                .filter(l -> !l.isEmpty() && !l.startsWith(">"))
                .limit(BODY_LINES)
                .toList()) {
            sum = merge(sum, lines.read(line, Source.BODY, sender, arrival).get(0));
        }
        return sum;
    }

    private static SubjectReading merge(SubjectReading a, SubjectReading b) {
        boolean name =
                a.name().isEmpty() && b.name().isPresent() && (b.testTime().isPresent() || b.cost() < 6.5);
        boolean time = a.testTime().isEmpty() && b.testTime().isPresent();
        if (!name && !time) {
            return a;
        }
        boolean nothingBefore = a.name().isEmpty() && a.testTime().isEmpty();
        Optional<String> newName = name ? b.name() : a.name();
        Optional<LocalDateTime> newTime = time ? b.testTime() : a.testTime();
        List<String> problems = new ArrayList<>();
        if (newName.isEmpty()) {
            problems.add("no name found");
        }
        if (newTime.isEmpty()) {
            problems.add("no test time found");
        }
        return new SubjectReading(
                nothingBefore ? Source.BODY : Source.BOTH,
                newName,
                newTime,
                a.statedZone().or(b::statedZone),
                a.dateStated() || b.dateStated(),
                a.clinic().or(b::clinic),
                a.reference().or(b::reference),
                a.mark().or(b::mark),
                a.dateOfBirth().or(b::dateOfBirth),
                a.claim().or(b::claim),
                a.cost() + 1,
                a.spans(),
                problems);
    }

    private static String cut(String s) {
        return s.length() > MOST_CHARS ? s.substring(0, MOST_CHARS) : s;
    }

    /** Encoded-words (RFC 2047) that are still there when a line comes from elsewhere than a parsed message. */
    private static String decoded(String subject) {
        if (!subject.contains("=?")) {
            return subject;
        }
        try {
            return MimeUtility.decodeText(subject);
        } catch (UnsupportedEncodingException e) {
            return subject;
        }
    }
}
