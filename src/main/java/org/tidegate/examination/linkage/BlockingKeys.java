package org.tidegate.examination.linkage;

import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidegate.booking.Appointment;
import org.tidegate.booking.TestRecord;
import org.tidegate.finding.SubjectReading;

/** What a statement and a test must have in common, at least one of them, to be compared at all. */
final class BlockingKeys {

    private static final long SLOT_SECONDS = 1200;

    private BlockingKeys() {}

    static Stream<String> of(TestRecord test) {
        Appointment a = test.appointment();
        PersonName name = PersonName.of(a.fullName());
        long bucket = a.slotStart().toEpochSecond() / SLOT_SECONDS;
        Stream<String> names = Stream.concat(
                name.tokens().stream().flatMap(BlockingKeys::sounds),
                name.tokens().stream().map(t -> slot(bucket, t)));
        Stream<String> rest = Stream.of(
                        a.email().map(BlockingKeys::address),
                        Optional.of(reference(a.ref())),
                        test.mark().map(BlockingKeys::mark))
                .flatMap(Optional::stream);
        return Stream.concat(names, rest);
    }

    /** Keys of a reading: name words as they sound, reference, mark, and first letters within the slots around the time. */
    static Stream<String> of(SubjectReading reading, Optional<Instant> said) {
        Optional<PersonName> name = reading.name().map(PersonName::of);
        Stream<String> sounds = name.stream().flatMap(n -> n.tokens().stream()).flatMap(BlockingKeys::sounds);
        Stream<String> slots = said.stream()
                .map(t -> t.getEpochSecond() / SLOT_SECONDS)
                .flatMap(b -> Stream.of(b - 2, b - 1, b, b + 1))
                .flatMap(b -> name.stream().flatMap(n -> n.tokens().stream()).map(t -> slot(b, t)));
        Stream<String> rest = Stream.of(
                        reading.reference().map(BlockingKeys::reference),
                        reading.mark().map(BlockingKeys::mark))
                .flatMap(Optional::stream);
        return Stream.of(sounds, slots, rest).flatMap(s -> s);
    }

    static Stream<String> ofName(String displayName) {
        return PersonName.of(displayName).tokens().stream().flatMap(BlockingKeys::sounds);
    }

    static String address(String address) {
        return "@" + address.toLowerCase(Locale.ROOT);
    }

    static String reference(String reference) {
        return "#" + plain(reference);
    }

    static String mark(String mark) {
        return "*" + plain(mark);
    }

    /** Letters and digits in upper case: how references and marks are compared. */
    static String plain(String code) {
        return code.toUpperCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }

    static Stream<String> sounds(NameToken token) {
        return token.isInitial() ? Stream.empty() : token.sounds().stream().map(s -> "n" + s);
    }

    private static String slot(long bucket, NameToken token) {
        return "s" + bucket + token.plain().charAt(0);
    }
}
