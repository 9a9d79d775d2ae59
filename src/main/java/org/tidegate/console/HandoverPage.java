package org.tidegate.console;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tidegate.report.Handover;
import org.tidegate.report.Handover.Act;
import org.tidegate.report.Handover.Call;
import org.tidegate.report.Handover.Case;
import org.tidegate.report.Handover.Standing;
import org.tidegate.report.Handover.Troubled;
import org.tidegate.work.PolicyAct;
import org.tidegate.work.SubmissionId;

/**
 * The handover in words.
 *
 * @param open what is open, a section a standing; empty ones are there too, so that nothing looks forgotten
 * @param done what went out by itself, and what else happened
 */
record HandoverPage(String period, String counts, List<Section> open, List<Section> done) {

    /** @param look how it stands out: the code of a standing, or {@code done} */
    record Section(String title, String hint, String look, List<Line> lines) {}

    /** @param submission number of the page that it is about; 0 where it is about none */
    record Line(long submission, String ref, String what, String when, String did) {

        public String number() {
            return new SubmissionId(submission).toString();
        }
    }

    static HandoverPage of(Handover h, Words words) {
        return new HandoverPage(
                words.dateAndTime(h.from()) + " – " + words.dateAndTime(h.until()),
                words.say(
                        "handover.counts",
                        Integer.toString(h.messages()),
                        Integer.toString(h.aside()),
                        Long.toString(h.unexamined())),
                Arrays.stream(Standing.values()).map(s -> open(s, h, words)).toList(),
                List.of(
                        section(
                                "by-itself",
                                words,
                                h.acts().stream().map(a -> line(a, words)).toList()),
                        section(
                                "calls",
                                words,
                                h.calls().stream().map(c -> line(c, words)).toList()),
                        section(
                                "troubled",
                                words,
                                h.troubled().stream().map(t -> line(t, words)).toList())));
    }

    private static Section open(Standing s, Handover h, Words words) {
        List<Line> lines = h.of(s).stream().map(c -> line(c, h.until(), words)).toList();
        return new Section(
                words.say("handover." + s.code()), words.say("handover." + s.code() + ".hint"), s.code(), lines);
    }

    private static Section section(String key, Words words, List<Line> lines) {
        return new Section(words.say("handover." + key), words.say("handover." + key + ".hint"), "done", lines);
    }

    private static Line line(Case c, Instant now, Words words) {
        List<String> place = new ArrayList<>();
        place.add(c.test().orElse(words.say("queue.no-test")));
        c.clinic().ifPresent(place::add);
        return new Line(
                c.id().value(),
                String.join(" · ", place),
                c.codes().isEmpty() ? words.say("queue.adds-up") : codes(c.codes(), words),
                when(c, now, words),
                c.act().map(a -> did(a, words)).orElse(""));
    }

    private static String when(Case c, Instant now, Words words) {
        String needed = c.neededBy()
                .map(t -> " · " + words.say("handover.needed", words.dateAndTime(t)))
                .orElse("");
        Optional<Instant> until = c.until();
        return switch (c.standing()) {
                    case SAVABLE ->
                        until.map(t -> words.left(t, now) + ", " + words.say("queue.counts", words.clock(t)))
                                .orElse("");
                    case WAITING ->
                        until.map(t -> words.say("page.waits", words.clock(t))).orElse("");
                    case LOST ->
                        until.map(t -> words.say("handover.too-late", words.both(t, now)))
                                .orElse("");
                    case URGENT, TO_DECIDE, TO_READ -> words.say("page.due", words.both(c.due(), now));
                }
                + needed;
    }

    private static String did(PolicyAct a, Words words) {
        return switch (a.act()) {
            case ASKED, ACKNOWLEDGED -> words.say("handover.did." + a.act().code(), words.clock(a.when()));
            case LEFT -> words.say("handover.did.left", reasons(a.codes(), words));
        };
    }

    private static Line line(Act a, Words words) {
        PolicyAct act = a.act();
        String what = words.say("handover.act." + act.act().code());
        String why = act.act() == PolicyAct.Act.ASKED ? codes(act.codes(), words) : reasons(act.codes(), words);
        return new Line(
                act.submission().value(),
                a.test().orElse(words.say("queue.no-test")),
                why.isEmpty() ? what + " · " + words.say("queue.adds-up") : what + " · " + why,
                words.clock(act.when()),
                words.say("outbox." + a.letter().code()));
    }

    private static Line line(Call c, Words words) {
        return new Line(
                c.id().value(),
                "",
                words.sayFirst("code." + c.why(), "handover.needed-before-shift"),
                words.clock(c.when()),
                words.say("outbox." + c.letter().code()));
    }

    private static Line line(Troubled t, Words words) {
        return new Line(
                t.id().map(SubmissionId::value).orElse(0L),
                "",
                words.say("letter." + t.kind()),
                "",
                words.say("outbox." + t.state().code()));
    }

    private static String codes(List<String> codes, Words words) {
        return codes.stream().map(c -> words.say("code." + c)).collect(Collectors.joining(", "));
    }

    private static String reasons(List<String> codes, Words words) {
        return codes.stream().map(c -> words.say("left." + c)).collect(Collectors.joining(", "));
    }
}
