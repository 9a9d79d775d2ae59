package org.tidegate.examination.checks;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tidegate.booking.Appointment;
import org.tidegate.booking.TestRecord;
import org.tidegate.examination.linkage.DocumentAgreement;
import org.tidegate.examination.linkage.DocumentComparison;
import org.tidegate.examination.linkage.DocumentMatch;
import org.tidegate.examination.linkage.Nicknames;

/** Whether the identity documents in the photos are the booked person's. */
final class DocumentFacts {

    private static final DocumentComparison DOCUMENTS = new DocumentComparison(Nicknames.standard());

    private DocumentFacts() {}

    /** One document that agrees is enough: another person's may lie beside it, such as a parent's. */
    static void add(CheckInput in, FactSheet sheet) {
        List<DocumentMatch> all = in.test().map(TestRecord::appointment).stream()
                .flatMap(booked -> matches(in, booked))
                .toList();
        sheet.fact("id_agrees", agreement(all).word());
        sheet.figure(
                "id_degree", all.stream().map(DocumentMatch::words).distinct().collect(Collectors.joining("; ")));
    }

    private static Stream<DocumentMatch> matches(CheckInput in, Appointment booked) {
        return in.messages().stream()
                .flatMap(m -> m.pictures().stream())
                .flatMap(p -> p.document().bearer().stream())
                .map(bearer -> DOCUMENTS.compare(bearer, booked));
    }

    private static DocumentAgreement agreement(List<DocumentMatch> all) {
        Set<DocumentAgreement> found =
                all.stream().map(DocumentMatch::agreement).collect(Collectors.toSet());
        if (found.contains(DocumentAgreement.YES)) {
            return DocumentAgreement.YES;
        }
        return found.equals(Set.of(DocumentAgreement.NO)) ? DocumentAgreement.NO : DocumentAgreement.UNREAD;
    }
}
