package org.tidegate.examination.checks;

import java.util.Set;
import java.util.stream.Collectors;
import org.tidegate.booking.Appointment;
import org.tidegate.booking.TestRecord;
import org.tidegate.examination.linkage.DocumentAgreement;
import org.tidegate.examination.linkage.DocumentComparison;
import org.tidegate.examination.linkage.Nicknames;

/** Whether the identity documents in the photos are the booked person's. */
final class DocumentFacts {

    private static final DocumentComparison DOCUMENTS = new DocumentComparison(Nicknames.standard());

    private DocumentFacts() {}

    /** One document that agrees is enough: another person's may lie beside it, such as a parent's. */
    static DocumentAgreement agreement(CheckInput in) {
        return in.test()
                .map(TestRecord::appointment)
                .map(booked -> agreement(in, booked))
                .orElse(DocumentAgreement.UNREAD);
    }

    private static DocumentAgreement agreement(CheckInput in, Appointment booked) {
        Set<DocumentAgreement> all = in.messages().stream()
                .flatMap(m -> m.pictures().stream())
                .flatMap(p -> p.document().bearer().stream())
                .map(bearer -> DOCUMENTS.compare(bearer, booked))
                .collect(Collectors.toSet());
        if (all.contains(DocumentAgreement.YES)) {
            return DocumentAgreement.YES;
        }
        return all.equals(Set.of(DocumentAgreement.NO)) ? DocumentAgreement.NO : DocumentAgreement.UNREAD;
    }
}
