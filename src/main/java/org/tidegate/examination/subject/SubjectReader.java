package org.tidegate.examination.subject;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.tidegate.finding.SubjectReading;
import org.tidegate.finding.SubjectReading.Source;
import org.tidegate.rules.Rules;

/** Reads what a person stated: the subject first, then from the body's first lines what the subject lacks. Safe for many threads. */
public final class SubjectReader {

    private static final int BODY_LINES = 12;
    private static final int BODY_CHARS = 4_000;

    private final LineReader lines;
    private final ZoneId home;

    public SubjectReader(Rules rules) {
        lines = new LineReader(rules);
        home = rules.timing().zone();
    }

    /** Readings, best first, never empty: alternatives stay so that matching can choose among them together with the booked tests. */
    public List<SubjectReading> read(StatedText text) {
        Sender sender = new Sender(text, lines.tokenizer());
        Resolver resolver = new Resolver(home, text.received());
        List<SubjectReading> subject = lines.read(text.subject().orElse(""), Source.SUBJECT, sender, resolver);
        if (subject.get(0).readable() || text.body().isBlank()) {
            return subject;
        }
        List<List<SubjectReading>> body = bodyLines(text.body()).stream()
                .map(l -> lines.read(l, Source.BODY, sender, resolver))
                .toList();
        return Completion.complete(subject, body);
    }

    /** Lines that the sender wrote himself; quoted ones begin with a bracket (RFC 3676 section 4.5). */
    private static List<String> bodyLines(String body) {
        String beginning = body.length() > BODY_CHARS ? body.substring(0, BODY_CHARS) : body;
        List<String> own = new ArrayList<>();
        beginning
                .lines()
                .map(String::strip)
                .filter(l -> !l.isEmpty() && !l.startsWith(">"))
                .limit(BODY_LINES)
                .forEach(own::add);
        return own;
    }
}
