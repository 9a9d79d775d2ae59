package org.tidegate.console;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.tidegate.casework.SubmissionView;
import org.tidegate.examination.picture.LineConfidence;
import org.tidegate.finding.PictureFinding.CassetteFinding;
import org.tidegate.finding.PictureFinding.Line;
import org.tidegate.rules.PictureRules;
import org.tidegate.work.Reading;

/**
 * What the program measured at the lines of a cassette, in words. Off unless a rule turns it on, shown to a reader only after his own reading, and
 * silent about a test line that he saw and the program did not: it never argues a positive down.
 */
final class Proposal {

    private static final String TEST = "T";

    private final PictureRules rules;
    private final Words words;

    Proposal(PictureRules rules, Words words) {
        this.rules = rules;
        this.words = words;
    }

    /**
     * @param readings in their order
     * @param reader who looks
     */
    List<String> after(List<Reading> readings, String reader, SubmissionView view) {
        Stream<Reading> own = readings.stream().filter(r -> r.who().value().equals(reader));
        return rules.proposeReading()
                ? own.reduce((a, b) -> b).map(r -> lines(r, view)).orElse(List.of())
                : List.of();
    }

    private List<String> lines(Reading own, SubmissionView view) {
        return view.messages().stream()
                .flatMap(m -> m.findings().pictures().stream())
                .flatMap(p -> p.cassettes().stream())
                .map(CassetteFinding::lines)
                .flatMap(lines -> lines.entrySet().stream())
                .filter(line -> !arguesDown(own, line))
                .map(line -> said(line.getKey(), line.getValue()))
                .toList();
    }

    private static boolean arguesDown(Reading own, Map.Entry<String, Line> line) {
        return own.test() == Reading.Line.PRESENT
                && line.getKey().equals(TEST)
                && !line.getValue().present();
    }

    private String said(String place, Line line) {
        return line.present()
                ? words.say("proposed.line", place, percent(line.strength()), percent(LineConfidence.of(line)))
                : words.say("proposed.none", place, Long.toString((long)
                        Math.ceil(100 * LineConfidence.limit(line, rules))));
    }

    private static String percent(double share) {
        return Long.toString(Math.round(100 * share));
    }
}
