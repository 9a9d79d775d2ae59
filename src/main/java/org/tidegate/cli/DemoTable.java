package org.tidegate.cli;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.tidegate.booking.TestKey;
import org.tidegate.casework.Desk;
import org.tidegate.examination.Assessment;
import org.tidegate.examination.OpenTests;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.Findings;
import org.tidegate.finding.Severity;
import org.tidegate.finding.WindowVerdict;
import org.tidegate.store.StoredAssessment;
import org.tidegate.store.StoredJson;
import org.tidegate.store.StoredMessage;
import org.tidegate.store.Tx;
import org.tidegate.work.SuggestedReply;

/** What the store holds after the demo, a row a message. */
final class DemoTable {

    private final Desk desk;
    private final ZoneId zone;
    private final OpenTests tests;

    DemoTable(Desk desk, ZoneId zone) {
        this.desk = desk;
        this.zone = zone;
        this.tests = OpenTests.of(desk.store().read(tx -> tx.tests().book()).tests());
    }

    List<DemoRow> rows() {
        return desk.store().read(tx -> {
            List<DemoRow> rows = new ArrayList<>();
            for (StoredMessage m : tx.messages().after(0, 10_000)) {
                rows.add(row(tx, m));
            }
            return rows;
        });
    }

    private DemoRow row(Tx tx, StoredMessage m) {
        Findings findings = desk.vault().findings(m).orElseThrow();
        StoredAssessment stored = m.submission().stream()
                .flatMap(s -> tx.assessments().of(s).stream())
                .filter(a -> a.messages().get(a.messages().size() - 1).equals(m.id()))
                .reduce((a, b) -> b)
                .orElseThrow(() -> new IllegalStateException("message " + m.id().value() + " was not assessed"));
        Assessment assessment = StoredJson.read(stored.content(), Assessment.class);
        List<Discrepancy> holds = assessment.discrepancies().stream()
                .filter(d -> d.severity() == Severity.HOLD)
                .toList();
        return new DemoRow(
                file(findings),
                who(assessment, findings),
                arrived(findings, m),
                stored.outcome(),
                assessment.test().map(TestKey::ref),
                assessment.disposition().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                holds.stream().map(d -> d.code().code()).sorted().toList(),
                assessment.discrepancies().stream()
                        .filter(d -> d.severity() == Severity.NOTE)
                        .map(d -> d.code().code())
                        .sorted()
                        .toList(),
                holds.stream().map(Discrepancy::reason).toList(),
                tx.replies().suggested(stored.submission(), stored.number()).map(this::reply),
                tx.policyActs()
                        .find(stored.submission(), stored.number())
                        .map(act -> act.act().code()),
                verdict(assessment, WindowVerdict.Check.PHOTO),
                verdict(assessment, WindowVerdict.Check.SENT));
    }

    private static String file(Findings findings) {
        String id = findings.envelope().messageId().orElse("");
        return id.contains("@") ? id.substring(0, id.indexOf('@')) + ".eml" : id;
    }

    private String who(Assessment assessment, Findings findings) {
        return assessment
                .test()
                .flatMap(tests::find)
                .map(t -> t.appointment().fullName())
                .or(() -> findings.readings().get(0).name())
                .or(() -> findings.envelope().from().stream()
                        .findFirst()
                        .map(f -> f.displayName().orElse(f.address())))
                .orElse("unknown");
    }

    private static Instant arrived(Findings findings, StoredMessage m) {
        return findings.envelope().hops().stream()
                .flatMap(h -> h.time().stream())
                .map(t -> t.instant())
                .findFirst()
                .orElse(m.taken());
    }

    private static String verdict(Assessment a, WindowVerdict.Check check) {
        return a.windows().stream()
                .filter(w -> w.check() == check)
                .map(w -> w.verdict().code())
                .findFirst()
                .orElse("-");
    }

    private String reply(SuggestedReply reply) {
        String until =
                reply.notAfter().map(t -> ", useful until " + clock(t, zone)).orElse("");
        return "letter (" + reply.language() + ") to " + reply.to().orElse("nobody yet") + until;
    }

    private static String clock(Instant time, ZoneId zone) {
        return DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT).format(time.atZone(zone));
    }

    static String print(List<DemoRow> rows, ZoneId zone) {
        StringBuilder out = new StringBuilder();
        for (DemoRow r : rows) {
            out.append(String.format(
                    Locale.ROOT,
                    "%s  %-24s %-9s %s%n",
                    clock(r.arrived(), zone),
                    cut(r.who(), 24),
                    r.verdict(),
                    cut(why(r), 150)));
            then(r).ifPresent(what ->
                    out.append(" ".repeat(43)).append("→ ").append(what).append(System.lineSeparator()));
        }
        return out.append(System.lineSeparator()).append(figures(rows)).toString();
    }

    /** The suggested letter, and whether it went by itself. */
    private static Optional<String> then(DemoRow r) {
        String act = r.byItself().orElse("left");
        return switch (act) {
            case "asked" -> r.reply().map(reply -> "by itself: " + reply);
            case "acknowledged" ->
                Optional.of("by itself: acknowledged"
                        + r.reply().map(reply -> "; a person: " + reply).orElse(""));
            default -> r.reply();
        };
    }

    private static String why(DemoRow r) {
        String time = "photo " + r.photo() + ", sent " + r.sent();
        return r.why().isEmpty()
                ? r.ref().map(ref -> ref + ": everything adds up; " + time).orElse("not a submission")
                : String.join("; ", r.why());
    }

    private static String cut(String s, int most) {
        String line = s.replaceAll("\\s+", " ");
        return line.length() > most ? line.substring(0, most - 1) + "…" : line;
    }

    private static String figures(List<DemoRow> rows) {
        Map<String, Integer> verdicts = new TreeMap<>();
        Map<String, Integer> holds = new TreeMap<>();
        Map<String, Integer> acts = new TreeMap<>();
        for (DemoRow r : rows) {
            verdicts.merge(r.verdict(), 1, Integer::sum);
            r.holds().forEach(h -> holds.merge(h, 1, Integer::sum));
            r.byItself().ifPresent(act -> acts.merge(act, 1, Integer::sum));
        }
        return "Messages: " + rows.size() + "; " + words(verdicts) + System.lineSeparator() + "Held for: "
                + words(holds) + System.lineSeparator() + "By itself: " + words(acts) + " to a person"
                + System.lineSeparator();
    }

    private static String words(Map<String, Integer> counts) {
        return counts.entrySet().stream()
                .map(e -> e.getKey() + " " + e.getValue())
                .reduce((a, b) -> a + ", " + b)
                .orElse("nothing");
    }
}
