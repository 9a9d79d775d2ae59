package org.tidegate.console;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.tidegate.casework.SubmissionView;

/** What happened to a submission, the newest first. */
final class History {

    private History() {}

    private record Step(Instant when, String words) {}

    static List<String> of(SubmissionView v, Instant now, Words words) {
        Stream<Step> assessed = v.history().stream().map(p -> new Step(p.when(), assessed(p, words)));
        Stream<Step> judged = v.judgements().stream()
                .map(j -> new Step(
                        j.when(),
                        words.say(
                                "history.judged",
                                j.who().value(),
                                words.say("decision." + j.decision().name().toLowerCase(Locale.ROOT)),
                                words.say("code." + j.discrepancy().code()),
                                j.reasonCode() + j.note().map(n -> ", " + n).orElse(""))));
        Stream<Step> written = v.letters().stream()
                .map(l -> new Step(
                        l.made(),
                        words.say(
                                "history.letter",
                                l.who().value(),
                                words.say("letter." + l.kind().code()),
                                words.say("outbox." + l.state().code()))));
        Stream<Step> ended = v.endings().stream()
                .map(e -> new Step(
                        e.when(),
                        words.say(
                                "history.ended",
                                e.who().value(),
                                words.say("ending." + e.kind().code()))));
        return Stream.of(assessed, judged, written, ended)
                .flatMap(s -> s)
                .sorted(Comparator.comparing(Step::when).reversed())
                .map(s -> words.both(s.when(), now) + ": " + s.words())
                .toList();
    }

    private static String assessed(SubmissionView.Past p, Words words) {
        String holds = p.holds().isEmpty()
                ? words.say("queue.adds-up")
                : String.join(
                        ", ",
                        p.holds().stream().map(c -> words.say("code." + c)).toList());
        return words.say("history.assessed", Integer.toString(p.number()), holds);
    }
}
