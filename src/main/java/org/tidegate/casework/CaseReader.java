package org.tidegate.casework;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidegate.booking.TestKey;
import org.tidegate.booking.TestRecord;
import org.tidegate.examination.Assessment;
import org.tidegate.finding.Findings;
import org.tidegate.finding.SubjectReading;
import org.tidegate.message.Mailbox;
import org.tidegate.rules.Rules;
import org.tidegate.store.StoredJson;
import org.tidegate.store.StoredMessage;
import org.tidegate.store.Tx;
import org.tidegate.work.Submission;

/** Puts together what the store holds of one submission. */
final class CaseReader {

    private final MessageVault vault;
    private final Book book;
    private final Rules rules;

    CaseReader(MessageVault vault, Book book, Rules rules) {
        this.vault = vault;
        this.book = book;
        this.rules = rules;
    }

    Optional<Assessment> assessment(Tx tx, Submission s) {
        return tx.assessments().newest(s.id()).map(a -> StoredJson.read(a.content(), Assessment.class));
    }

    /** The assessment that stands; empty where it, or a message of the submission, is forgotten: then nothing can be done about it. */
    Optional<Assessment> intact(Tx tx, Submission s) {
        List<StoredMessage> messages = tx.messages().ofSubmission(s.id());
        boolean whole = !messages.isEmpty()
                && messages.stream().noneMatch(m -> m.wrappedKey().isEmpty());
        return whole ? assessment(tx, s) : Optional.empty();
    }

    Optional<TestRecord> test(Tx tx, Assessment assessment) {
        return assessment.test().flatMap(t -> test(tx, t));
    }

    Optional<TestRecord> test(Tx tx, TestKey key) {
        return book.tests(tx).find(key);
    }

    /** Every attempt of the appointment, the first one first. */
    List<TestRecord> attempts(Tx tx, String ref) {
        return book.tests(tx).attempts(ref);
    }

    /** What its messages showed, in the order of taking; forgotten ones are left out. */
    List<Findings> findings(Tx tx, Submission s) {
        return tx.messages().ofSubmission(s.id()).stream()
                .flatMap(m -> vault.findings(m).stream())
                .toList();
    }

    /** What a letter about the submission is about. */
    Matter matter(Tx tx, Submission s, Assessment assessment) {
        StoredMessage first = tx.messages().ofSubmission(s.id()).get(0);
        Findings findings = vault.findings(first).orElseThrow();
        Optional<TestRecord> test = test(tx, assessment);
        return new Matter(
                s.id(),
                s.assessment(),
                findings,
                assessment,
                test,
                Deadlines.of(findings, first.taken(), assessment, test, rules));
    }

    /** Whom a person may write to about it: the booked address first, then those that its messages came from. */
    List<String> addresses(Tx tx, Submission s, Matter matter) {
        Stream<String> from = findings(tx, s).stream()
                .flatMap(f -> f.envelope().from().stream())
                .map(Mailbox::address);
        return Stream.concat(matter.bookedAddress().stream(), from)
                .filter(a -> a.indexOf('@') > 0)
                .distinct()
                .toList();
    }

    Optional<Findings> first(Tx tx, Submission s) {
        return tx.messages().ofSubmission(s.id()).stream().findFirst().flatMap(vault::findings);
    }

    /** The booked name where the match is sure, else as stated, else the sender. */
    static String who(Optional<TestRecord> test, Optional<Findings> first) {
        return test.map(t -> t.appointment().fullName())
                .or(() -> first.flatMap(CaseReader::stated))
                .orElse("forgotten");
    }

    private static Optional<String> stated(Findings findings) {
        return findings.readings().stream()
                .map(SubjectReading::name)
                .flatMap(Optional::stream)
                .findFirst()
                .or(() -> findings.envelope().from().stream()
                        .map(m -> m.displayName().orElse(m.address()))
                        .findFirst());
    }
}
