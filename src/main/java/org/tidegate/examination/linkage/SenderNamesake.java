package org.tidegate.examination.linkage;

import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.tidegate.booking.Appointment;
import org.tidegate.booking.TestRecord;

/**
 * Another person whom the stated name fits as well and who is booked under the sender's address, at whatever time: her mail is
 * not surely about the test of a namesake, though her own is over or to come.
 */
final class SenderNamesake {

    private static final Set<String> AGAINST = Set.of(NameAgreement.DIFFERENT, NameAgreement.PART);

    private SenderNamesake() {}

    /**
     * The one who fits best; empty where the sender's address is the found person's own.
     *
     * @param compare how well the statement fits a test
     */
    static Optional<Candidate> of(
            String address, TestRecord found, TestIndex index, Function<TestRecord, Candidate> compare) {
        Appointment a = found.appointment();
        if (a.email().filter(address::equalsIgnoreCase).isPresent()) {
            return Optional.empty();
        }
        double name = compare.apply(found).nameWeight();
        return index.bookedUnder(address)
                .filter(t -> !samePerson(a, t.appointment()))
                .map(compare)
                .filter(c -> c.nameWeight() >= name && agrees(c))
                .max(Comparator.comparingDouble(Candidate::evidence));
    }

    private static boolean samePerson(Appointment a, Appointment b) {
        return a.fullName().equalsIgnoreCase(b.fullName()) && a.dateOfBirth().equals(b.dateOfBirth());
    }

    private static boolean agrees(Candidate c) {
        return c.weights().stream()
                .filter(w -> Candidate.NAME.contains(w.field()))
                .noneMatch(w -> AGAINST.contains(w.level()));
    }
}
