package org.tidegate.examination.checks;

import java.util.Locale;
import java.util.Optional;
import org.tidegate.examination.linkage.LinkageResult;
import org.tidegate.finding.Findings;
import org.tidegate.finding.SubjectReading;

/** What the participant stated, and which test it belongs to. */
final class StatementFacts {

    private StatementFacts() {}

    static void add(CheckInput in, FactSheet sheet) {
        sheet.fact(
                "name_readable",
                in.messages().stream().anyMatch(m -> best(m).name().isPresent()));
        sheet.fact(
                "time_readable",
                in.messages().stream().anyMatch(m -> best(m).testTime().isPresent()));
        sheet.fact("body_supplied", in.messages().stream().anyMatch(StatementFacts::bodySupplied));
        sheet.fact(
                "has_time_statement",
                in.messages().stream().anyMatch(m -> best(m).testTime().isPresent()));
        sheet.figure("subject", in.last().envelope().subject().orElse("(no subject)"));
        match(in.match(), sheet);
        sheet.fact("clinic_agrees", clinicAgrees(in));
        sheet.figure("stated_clinic", statedClinic(in).orElse(""));
        in.test().ifPresent(t -> {
            sheet.figure("booked_clinic", t.appointment().clinic());
            sheet.figure("booked_name", t.appointment().fullName());
            sheet.figure("ref", t.key().toString());
        });
        sheet.fact(
                "observed",
                in.test().map(t -> t.observed().name().toLowerCase(Locale.ROOT)).orElse("unstated"));
        sheet.fact("observer_timed", in.test().flatMap(t -> t.timerStart()).isPresent());
        sheet.fact("submission_ready", in.standing().readyBeforeLast());
    }

    static SubjectReading best(Findings message) {
        return message.readings().get(0);
    }

    private static boolean bodySupplied(Findings m) {
        return best(m).readable() && best(m).source() != SubjectReading.Source.SUBJECT;
    }

    private static void match(LinkageResult match, FactSheet sheet) {
        sheet.fact("outcome", match.outcome().name().toLowerCase(Locale.ROOT));
        sheet.fact("match_sure", match.outcome() == LinkageResult.Outcome.MATCH);
        sheet.figure("candidates", String.valueOf(match.candidates().size()));
        sheet.figure(
                "candidate_refs",
                match.candidates().stream()
                        .limit(3)
                        .map(c -> c.test().toString())
                        .reduce((a, b) -> a + ", " + b)
                        .orElse("none"));
    }

    private static Optional<String> statedClinic(CheckInput in) {
        return in.messages().stream().flatMap(m -> best(m).clinic().stream()).findFirst();
    }

    private static String clinicAgrees(CheckInput in) {
        Optional<String> stated = statedClinic(in);
        Optional<String> booked = in.test().map(t -> t.appointment().clinic());
        if (stated.isEmpty() || booked.isEmpty()) {
            return "unstated";
        }
        return stated.get().equals(booked.get()) ? "yes" : "no";
    }
}
