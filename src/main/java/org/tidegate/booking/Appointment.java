package org.tidegate.booking;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * A booked observation slot and the participant it is for.
 *
 * @param ref the clinic's reference, unique in the book
 * @param slotStart inclusive
 * @param slotEnd exclusive
 * @param language BCP 47 tag of the language in which the participant is written to
 * @param neededBy when the participant embarks
 * @param guardian name of the adult who may write for a minor
 * @param discloseTo who else may be told, with the participant's consent
 */
public record Appointment(
        String ref,
        String givenName,
        String familyName,
        Optional<LocalDate> dateOfBirth,
        Optional<String> email,
        String clinic,
        OffsetDateTime slotStart,
        OffsetDateTime slotEnd,
        Optional<String> language,
        Optional<String> phone,
        Optional<OffsetDateTime> neededBy,
        Optional<String> guardian,
        Optional<String> discloseTo,
        Optional<String> note) {

    /** Given name then family name, as booked. */
    public String fullName() {
        return (givenName + " " + familyName).strip();
    }
}
