package org.tidegate.console;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tidegate.booking.TestRecord;
import org.tidegate.casework.SubmissionView;
import org.tidegate.casework.SubmissionView.TakenMessage;
import org.tidegate.examination.linkage.Candidate;
import org.tidegate.finding.Assumption;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.PictureFinding;
import org.tidegate.finding.WindowVerdict;
import org.tidegate.message.Mailbox;
import org.tidegate.work.SuggestedReply;

/** One submission as the page shows it. */
record SubmissionPage(
        String number,
        String state,
        String test,
        String due,
        String left,
        List<CheckLine> checks,
        List<WindowLine> windows,
        List<PhotoView> photos,
        List<MessageView> messages,
        List<FitView> fits,
        String replyTo,
        String replySubject,
        String replyText,
        List<String> history) {

    /** A discrepancy. */
    record CheckLine(String severity, String code, String reason) {}

    /** A time verdict with its proof, step by step. */
    record WindowLine(String title, String verdict, String basis, List<String> steps) {}

    /** A picture and what was seen in it. */
    record PhotoView(String source, String title, List<String> facts, boolean shown) {}

    /** A message. */
    record MessageView(String from, String subject, String taken, String text) {}

    /** A candidate of the book with its running sum. */
    record FitView(String test, String probability, List<String> weights) {}

    static SubmissionPage of(SubmissionView v, Instant now, Words words) {
        return new SubmissionPage(
                v.submission().id().toString(),
                v.submission().state().code().replace('-', ' '),
                v.test().map(t -> test(t, words)).orElse("no test found"),
                words.dateAndTime(v.submission().due()),
                words.left(v.submission().due(), now),
                v.assessment().discrepancies().stream()
                        .map(SubmissionPage::check)
                        .toList(),
                v.assessment().windows().stream().map(SubmissionPage::window).toList(),
                photos(v),
                v.messages().stream().map(m -> message(m, words)).toList(),
                v.assessment().match().candidates().stream()
                        .limit(3)
                        .map(SubmissionPage::fit)
                        .toList(),
                v.reply().flatMap(SuggestedReply::to).orElse(""),
                v.reply().map(SuggestedReply::subject).orElse(""),
                v.reply().map(SuggestedReply::text).orElse(""),
                v.history().stream()
                        .map(p -> words.dateAndTime(p.when()) + ": " + p.disposition()
                                + (p.holds().isEmpty() ? "" : " (" + String.join(", ", p.holds()) + ")"))
                        .toList());
    }

    private static String test(TestRecord t, Words words) {
        return t.key() + ", " + t.appointment().fullName() + ", "
                + t.appointment().clinic() + ", slot "
                + words.dateAndTime(t.appointment().slotStart().toInstant())
                + t.timerStart()
                        .map(s -> ", timer " + words.clock(s.toInstant()))
                        .orElse("");
    }

    private static CheckLine check(Discrepancy d) {
        return new CheckLine(d.severity().code(), d.code().code(), d.reason());
    }

    private static WindowLine window(WindowVerdict w) {
        String title = w.check() == WindowVerdict.Check.PHOTO ? "Photo taken in the reading window" : "Sent in time";
        String level = w.level()
                .map(l -> "decided by " + l.name().toLowerCase(Locale.ROOT) + " clocks")
                .orElse("not decided");
        String margin = w.margin().map(m -> ", margin " + minutes(m)).orElse("");
        String leaning = w.assumptions().isEmpty()
                ? ""
                : ", leaning on "
                        + String.join(
                                ", ",
                                w.assumptions().stream()
                                        .map(Assumption::toString)
                                        .toList());
        return new WindowLine(
                title,
                w.verdict().code(),
                level + margin + leaning,
                w.derivation().stream().map(WindowVerdict.DerivationStep::words).toList());
    }

    private static String minutes(Duration d) {
        return d.toMinutes() + " min " + String.format(Locale.ROOT, "%02d s", Math.abs(d.toSecondsPart()));
    }

    private static List<PhotoView> photos(SubmissionView v) {
        List<PhotoView> all = new ArrayList<>();
        for (int m = 0; m < v.messages().size(); m++) {
            for (PictureFinding p : v.messages().get(m).findings().pictures()) {
                if (p.kind() != PictureFinding.Kind.DECORATION) {
                    all.add(photo(v, m, p));
                }
            }
        }
        return all;
    }

    private static PhotoView photo(SubmissionView v, int message, PictureFinding p) {
        String source = "/submissions/" + v.submission().id().value() + "/messages/" + message + "/picture?path="
                + URLEncoder.encode(p.path(), StandardCharsets.UTF_8);
        List<String> facts = new ArrayList<>();
        facts.add(p.width() + " × " + p.height() + " pixels, " + p.mediaType());
        facts.add(p.cassettes().isEmpty() ? "no cassette found" : p.cassettes().size() + " cassette(s) found");
        facts.add(p.document().present() ? "an identity document is in view" : "no identity document found");
        p.legibility()
                .ifPresent(l -> facts.add(l.readable() ? "legible" : "hard to read: " + String.join(", ", l.why())));
        p.capture()
                .forEach(c -> facts.add(c.place() + ": " + c.wall()
                        + c.offset().map(o -> " " + o).orElse("")));
        return new PhotoView(source, p.fileName().orElse(p.path()), facts, p.width() > 0);
    }

    private static MessageView message(TakenMessage m, Words words) {
        String from = m.findings().envelope().from().stream()
                .findFirst()
                .map(SubmissionPage::mailbox)
                .orElse("no sender");
        return new MessageView(
                from,
                m.findings().envelope().subject().orElse("(no subject)"),
                words.dateAndTime(m.taken()),
                m.findings().envelope().text());
    }

    private static String mailbox(Mailbox m) {
        return m.displayName().map(n -> n + " <" + m.address() + ">").orElse(m.address());
    }

    private static FitView fit(Candidate c) {
        List<String> weights = new ArrayList<>();
        weights.add(String.format(Locale.ROOT, "prior %+.1f", c.priorWeight()));
        c.weights()
                .forEach(w -> weights.add(String.format(Locale.ROOT, "%s %s %+.1f", w.field(), w.level(), w.weight())));
        weights.add(String.format(Locale.ROOT, "total %+.1f", c.total()));
        return new FitView(c.test().toString(), String.format(Locale.ROOT, "%.4f", c.probability()), weights);
    }
}
