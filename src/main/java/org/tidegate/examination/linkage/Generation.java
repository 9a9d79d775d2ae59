package org.tidegate.examination.linkage;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tidegate.booking.Appointment;

/** Tells father from son: a suffix in the booked name or its address, or else the order of birth among namesakes. */
final class Generation {

    /** Namesakes fewer years apart are hardly parent and child. */
    private static final int YEARS_BETWEEN = 15;

    private Generation() {}

    /** The suffix that a booked person bears, {@code jr}, {@code sr}, {@code ii}, {@code iii} or {@code iv}. */
    static Optional<String> of(Appointment a, List<Appointment> namesakes) {
        return PersonName.of(a.fullName())
                .suffix()
                .or(() -> a.email().flatMap(Generation::inAddress))
                .or(() -> a.dateOfBirth().flatMap(born -> byBirth(born, namesakes)));
    }

    /** The level of field {@code suffix}. */
    static Optional<String> level(Optional<String> stated, Optional<String> booked) {
        if (stated.isEmpty() && booked.isEmpty()) {
            return Optional.empty();
        }
        if (stated.isEmpty()) {
            return Optional.of(NameAgreement.UNSTATED);
        }
        return Optional.of(booked.map(b -> sameRank(b, stated.get()) ? "same" : NameAgreement.DIFFERENT)
                .orElse("unbooked"));
    }

    private static boolean sameRank(String a, String b) {
        return rank(a).equals(rank(b));
    }

    private static String rank(String suffix) {
        return suffix.equals("ii") ? "jr" : suffix;
    }

    private static Optional<String> inAddress(String address) {
        String local = address.substring(0, Math.max(0, address.indexOf('@'))).toLowerCase(Locale.ROOT);
        return List.of("jnr", "jr", "snr", "iii").stream()
                .filter(local::endsWith)
                .map(s -> s.equals("jnr") ? "jr" : s.equals("snr") ? "sr" : s)
                .findFirst();
    }

    private static Optional<String> byBirth(LocalDate born, List<Appointment> namesakes) {
        for (Appointment other : namesakes) {
            int years =
                    other.dateOfBirth().map(o -> born.getYear() - o.getYear()).orElse(0);
            if (Math.abs(years) >= YEARS_BETWEEN) {
                return Optional.of(years > 0 ? "jr" : "sr");
            }
        }
        return Optional.empty();
    }
}
