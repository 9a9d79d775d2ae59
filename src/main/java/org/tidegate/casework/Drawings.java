package org.tidegate.casework;

import java.util.List;
import java.util.Optional;
import org.tidegate.examination.Assessment;
import org.tidegate.examination.AssessmentInput;
import org.tidegate.examination.Assessor;
import org.tidegate.examination.checks.Standing;
import org.tidegate.examination.timing.Enclosure;
import org.tidegate.examination.timing.Outage;
import org.tidegate.examination.timing.TimeCase;
import org.tidegate.examination.timing.TimeDrawing;
import org.tidegate.examination.timing.TimeJudgement;
import org.tidegate.finding.Findings;
import org.tidegate.rules.Rules;
import org.tidegate.store.Store;
import org.tidegate.store.Tx;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;

/** What each clock says about a submission, drawn. */
public final class Drawings {

    private final Store store;
    private final CaseReader reader;
    private final Book book;
    private final Rules rules;
    private final Assessor assessor;

    Drawings(Store store, CaseReader reader, Book book, Rules rules) {
        this.store = store;
        this.reader = reader;
        this.book = book;
        this.rules = rules;
        this.assessor = new Assessor(rules);
    }

    /** Empty where there are no time verdicts, or where a message is forgotten. */
    public Optional<TimeDrawing> of(SubmissionId id) {
        return evidence(id).map(e -> TimeDrawing.of(e.times(), e.judgement(), rules.timing()));
    }

    /** The page for a participant who disputes, in the booked language (PDF, one A4 page); empty as {@link #of}. */
    public Optional<byte[]> enclosure(SubmissionId id) {
        return evidence(id).map(this::page);
    }

    /** The page as it stands within a transaction. */
    Optional<byte[]> enclosure(Tx tx, Submission submission, Assessment assessment) {
        return evidence(tx, submission, assessment).map(this::page);
    }

    private byte[] page(Evidence e) {
        String language = e.times().test().appointment().language().orElse("");
        return new Enclosure(e.times(), e.judgement(), rules, language).pdf();
    }

    private record Evidence(TimeCase times, TimeJudgement judgement) {}

    private Optional<Evidence> evidence(SubmissionId id) {
        return store.read(tx ->
                tx.submissions().find(id).flatMap(s -> reader.assessment(tx, s).flatMap(a -> evidence(tx, s, a))));
    }

    private Optional<Evidence> evidence(Tx tx, Submission s, Assessment a) {
        List<Findings> messages = reader.findings(tx, s);
        if (messages.size() < s.messages().size()) {
            return Optional.empty();
        }
        List<Outage> outages = tx.registers().outages().stream()
                .map(o -> new Outage(o.from(), o.until()))
                .toList();
        Standing standing = Standing.fresh();
        AssessmentInput input = new AssessmentInput(messages, book.tests(tx), standing, outages, Optional.empty());
        return a.time().flatMap(time -> assessor.timeCase(input, a).map(c -> new Evidence(c, time)));
    }
}
