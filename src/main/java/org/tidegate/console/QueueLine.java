package org.tidegate.console;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.tidegate.booking.TestRecord;
import org.tidegate.casework.QueueRow;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.work.SubmissionState;

/**
 * One row of the queue in words.
 *
 * @param look {@code urgent}, {@code over} or nothing: how the row is marked
 * @param counts until when a correction counts; empty where none does any more
 * @param claimed who has taken it up; empty where nobody has
 * @param level the part of its time that is left, in tenths
 */
record QueueLine(
        long id,
        String number,
        String look,
        String who,
        String test,
        String arrived,
        List<Reason> reasons,
        String action,
        String due,
        String left,
        String counts,
        int level,
        String claimed) {

    /** A bar is full with this much time left. */
    private static final Duration FULL = Duration.ofMinutes(30);

    private static final int LONG_REASON = 120;

    /** What does not add up: its name, and the figures. */
    record Reason(String title, String words) {}

    static QueueLine of(QueueRow r, Instant now, Words words) {
        Duration left = Duration.between(now, r.due());
        return new QueueLine(
                r.id().value(),
                r.id().toString(),
                r.urgent() ? "urgent" : left.isNegative() ? "over" : "",
                r.who(),
                r.test().map(t -> test(t, words)).orElseGet(() -> words.say("queue.no-test")),
                words.say("queue.arrived", words.clock(r.arrived()), words.relative(r.arrived(), now)),
                r.holds().stream().map(d -> reason(d, words)).toList(),
                action(r, words),
                words.say("queue.by", words.clock(r.due())),
                words.left(r.due(), now),
                r.savable()
                        .filter(now::isBefore)
                        .map(s -> words.say("queue.counts", words.clock(s)))
                        .orElse(""),
                (int) Math.max(0, Math.min(10, Math.ceil(10.0 * left.toSeconds() / FULL.toSeconds()))),
                r.claimedBy().map(c -> words.say("queue.claimed", c.value())).orElse(""));
    }

    private static String test(TestRecord t, Words words) {
        String slot = words.dateAndTime(t.appointment().slotStart().toInstant());
        return t.key() + " · " + t.appointment().clinic() + " · " + words.say("queue.slot", slot);
    }

    private static Reason reason(Discrepancy d, Words words) {
        return new Reason(words.say("code." + d.code().code()), gist(d));
    }

    /** The reason without its proof, which stands on the submission's own page. */
    private static String gist(Discrepancy d) {
        int proof = d.reason().indexOf(": ");
        return d.reason().length() > LONG_REASON && proof > 0 ? d.reason().substring(0, proof) : d.reason();
    }

    private static String action(QueueRow r, Words words) {
        if (r.urgent()) {
            return words.say("act.call");
        }
        if (r.state() == SubmissionState.TO_READ) {
            return words.say("act.read");
        }
        DiscrepancyCode first = r.holds().get(0).code();
        if (first == DiscrepancyCode.CORRESPONDENCE) {
            return words.say("act.answer");
        }
        return r.suggestion()
                .map(s -> s.equals("ask")
                        ? words.sayFirst("act.ask." + first.code(), "act.ask")
                        : words.say("act.explain"))
                .orElseGet(() -> words.say("act.judge"));
    }
}
