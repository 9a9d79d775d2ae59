package org.tidegate.casework;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import org.tidegate.booking.TestRecord;
import org.tidegate.examination.Assessment;
import org.tidegate.finding.Findings;
import org.tidegate.finding.SubjectReading;
import org.tidegate.store.StoredJson;
import org.tidegate.store.Tx;
import org.tidegate.work.Submission;

/** Puts together what the store holds of one submission. */
final class CaseReader {

    private static final DateTimeFormatter SLOT = DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH);

    private final MessageVault vault;
    private final Book book;

    CaseReader(MessageVault vault, Book book) {
        this.vault = vault;
        this.book = book;
    }

    Optional<Assessment> assessment(Tx tx, Submission s) {
        return tx.assessments().newest(s.id()).map(a -> StoredJson.read(a.content(), Assessment.class));
    }

    Optional<TestRecord> test(Tx tx, Assessment assessment) {
        return assessment.test().flatMap(book.tests(tx)::find);
    }

    Optional<Findings> first(Tx tx, Submission s) {
        return tx.messages().find(s.messages().get(0)).flatMap(vault::findings);
    }

    /** The booked name where the match is sure, else as stated, else the sender. */
    String who(Tx tx, Submission s, Assessment assessment) {
        return test(tx, assessment)
                .map(t -> t.appointment().fullName())
                .or(() -> first(tx, s).flatMap(CaseReader::stated))
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

    static String inWords(TestRecord test) {
        OffsetDateTime slot = test.appointment().slotStart();
        return test.key() + ", " + test.appointment().clinic() + ", " + SLOT.format(slot);
    }
}
