package org.tidegate.console;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tidegate.booking.TestRecord;
import org.tidegate.casework.Replying;
import org.tidegate.casework.SubmissionView;
import org.tidegate.finding.Assumption;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.Severity;
import org.tidegate.finding.WindowVerdict;
import org.tidegate.message.Mailbox;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionState;

/**
 * One submission as the page shows it.
 *
 * @param version which state a form of this page is about
 * @param open what still holds it
 * @param settled discrepancies that do not, or no longer
 * @param drawing the clocks in words; empty where nothing is drawn
 * @param crops cassettes by themselves
 * @param forgotten whether a message of it is, with its photos
 * @param answered whether the suggested reply was given already
 * @param claimedBy another person who has taken it up; empty where nobody has
 * @param kin other submissions among which a message of this one is split
 * @param mine whether the person who looks has taken it up
 */
record SubmissionPage(
        long id,
        int version,
        String number,
        String state,
        String stateWords,
        String who,
        String test,
        String arrived,
        String due,
        String left,
        boolean urgent,
        String phone,
        List<CheckLine> open,
        List<CheckLine> settled,
        List<WindowLine> windows,
        String drawing,
        List<CropView> crops,
        List<PhotoView> photos,
        boolean forgotten,
        List<MessageView> messages,
        List<FitView> fits,
        Optional<Replying.Draft> draft,
        String draftUntil,
        boolean answered,
        List<LetterLine> letters,
        List<String> history,
        String claimedBy,
        boolean mine,
        String waitsUntil,
        List<Kin> kin) {

    /** Another submission that has pictures of the same message. */
    record Kin(long id, String number, String test) {

        static Kin of(Submission s) {
            return new Kin(s.id().value(), s.id().toString(), s.test().orElse(""));
        }
    }

    /** A discrepancy. */
    record CheckLine(String severity, String code, String title, String reason) {

        static CheckLine of(Discrepancy d, Words words) {
            return new CheckLine(
                    d.severity().code(),
                    d.code().code(),
                    words.say("code." + d.code().code()),
                    d.reason());
        }
    }

    /** A time verdict with its proof, step by step. */
    record WindowLine(String title, String verdict, String verdictWords, String basis, List<String> steps) {

        static WindowLine of(WindowVerdict w, Words words) {
            String level = w.level()
                    .map(l -> words.say("window.level." + l.name().toLowerCase(Locale.ROOT)))
                    .orElse(words.say("window.undecided"));
            String margin = w.margin()
                    .map(m -> ", " + words.say("window.margin", words.exactAmount(m)))
                    .orElse("");
            String leaning = String.join(
                    ", ", w.assumptions().stream().map(Assumption::toString).toList());
            return new WindowLine(
                    words.say("window." + w.check().name().toLowerCase(Locale.ROOT)),
                    w.verdict().code(),
                    words.say("verdict." + w.verdict().code()),
                    level + margin + (leaning.isEmpty() ? "" : ", " + words.say("window.leaning", leaning)),
                    w.derivation().stream()
                            .map(WindowVerdict.DerivationStep::words)
                            .toList());
        }
    }

    /** A message. */
    record MessageView(String from, String subject, String taken, String text) {}

    static SubmissionPage of(
            SubmissionView v, Optional<Replying.Draft> draft, String drawing, String reader, Instant now, Words words) {
        Submission s = v.submission();
        return new SubmissionPage(
                s.id().value(),
                s.version(),
                s.id().toString(),
                s.state().code(),
                words.say("state." + s.state().code()),
                v.test().map(t -> t.appointment().fullName()).orElseGet(() -> sender(v)),
                v.test().map(t -> test(t, words)).orElseGet(() -> words.say("queue.no-test")),
                words.both(s.arrived(), now),
                words.dateAndTime(s.due()),
                waitsForAPerson(s) ? words.left(s.due(), now) : "",
                s.urgent(),
                v.test().flatMap(t -> t.appointment().phone()).orElse(""),
                v.open().stream().map(d -> CheckLine.of(d, words)).toList(),
                v.assessment().discrepancies().stream()
                        .filter(d -> d.severity() != Severity.HOLD || !v.open().contains(d))
                        .map(d -> CheckLine.of(d, words))
                        .toList(),
                v.assessment().windows().stream()
                        .map(w -> WindowLine.of(w, words))
                        .toList(),
                drawing,
                CropView.all(v, words),
                PhotoView.all(v, words),
                v.messages().size() < s.messages().size(),
                v.messages().stream().map(m -> message(m, now, words)).toList(),
                FitView.all(v),
                draft,
                draft.flatMap(Replying.Draft::notAfter).map(words::clock).orElse(""),
                v.answered(),
                LetterLine.all(v.letters(), now, words),
                History.of(v, now, words),
                v.claim()
                        .map(c -> c.who().value())
                        .filter(c -> !c.equals(reader))
                        .orElse(""),
                v.claim().filter(c -> c.who().value().equals(reader)).isPresent(),
                v.waitsUntil().map(u -> words.both(u, now)).orElse(""),
                v.kin().stream().map(Kin::of).toList());
    }

    private static boolean waitsForAPerson(Submission s) {
        return s.state() == SubmissionState.HELD || s.state() == SubmissionState.TO_READ;
    }

    private static String sender(SubmissionView v) {
        return v.messages().stream()
                .flatMap(m -> m.findings().envelope().from().stream())
                .findFirst()
                .map(m -> m.displayName().orElse(m.address()))
                .orElse("?");
    }

    private static String test(TestRecord t, Words words) {
        String slot = words.dateAndTime(t.appointment().slotStart().toInstant());
        String timer = t.timerStart()
                .map(s -> " · " + words.say("page.timer", words.clock(s.toInstant())))
                .orElse("");
        return t.key() + " · " + t.appointment().clinic() + " · " + words.say("queue.slot", slot) + timer + " · "
                + t.kit() + t.lot().map(l -> " " + l).orElse("")
                + t.mark().map(m -> " · " + words.say("page.mark", m)).orElse("");
    }

    private static MessageView message(SubmissionView.TakenMessage m, Instant now, Words words) {
        String from = m.findings().envelope().from().stream()
                .findFirst()
                .map(SubmissionPage::mailbox)
                .orElse("?");
        return new MessageView(
                from,
                m.findings().envelope().subject().orElse("–"),
                words.both(m.taken(), now),
                m.findings().envelope().text());
    }

    private static String mailbox(Mailbox m) {
        return m.displayName().map(n -> n + " <" + m.address() + ">").orElse(m.address());
    }
}
