package org.tidegate.casework;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Set;
import org.tidegate.booking.BookReader;
import org.tidegate.booking.BookResult;
import org.tidegate.message.HeaderDate;
import org.tidegate.message.Limits;
import org.tidegate.message.MessageReader;
import org.tidegate.rules.Rules;
import org.tidegate.work.MessageId;
import org.tidegate.work.Role;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.User;
import org.tidegate.work.UserId;

/** A desk over messages of the sample morning, on a clock that tests turn. */
final class SampleDesk implements AutoCloseable {

    static final Instant MORNING = Instant.parse("2026-05-04T08:35:00Z");
    static final User OPERATOR = user("ada", Role.OPERATOR);
    static final User OTHER_OPERATOR = user("ben", Role.OPERATOR);
    static final User READER = user("rita", Role.READER);
    static final User LEAD = user("lena", Role.CLINICAL_LEAD);
    static final User AUDITOR = user("axel", Role.AUDITOR);
    static final User OFFICER = user("dora", Role.DATA_PROTECTION_OFFICER);

    private final Turned clock = new Turned();
    private final Desk desk;

    SampleDesk(Path folder, Instant now) throws IOException {
        this(folder, now, Rules.bundled());
    }

    SampleDesk(Path folder, Instant now, Rules rules) throws IOException {
        clock.now = now;
        desk = Desk.open(DeskConfig.embedded(folder, rules, clock).withInspection(Remembered.by(rules)));
        BookResult.Read book = (BookResult.Read) BookReader.read(Path.of("sample-mailbox/appointments.csv"));
        desk.books().replace(book.book(), UserId.DAEMON);
    }

    private static User user(String name, Role role) {
        return new User(new UserId(name), name, Set.of(role), "", true);
    }

    Desk desk() {
        return desk;
    }

    Instant now() {
        return clock.now;
    }

    Clock clock() {
        return clock;
    }

    void turnTo(Instant time) {
        clock.now = time;
    }

    void pass(Duration time) {
        clock.now = clock.now.plus(time);
    }

    /** Takes the message in and examines it. @return the submission that it is part of */
    SubmissionId take(String file) {
        try {
            return take(Files.readAllBytes(Path.of("sample-mailbox", file)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The same at the time at which our own server had it. */
    SubmissionId arrives(String file) {
        try {
            byte[] raw = Files.readAllBytes(Path.of("sample-mailbox", file));
            turnTo(MessageReader.read(raw, Limits.standard()).envelope().hops().stream()
                    .flatMap(h -> h.time().stream())
                    .map(HeaderDate::instant)
                    .findFirst()
                    .orElseThrow());
            return take(raw);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    SubmissionId take(byte[] raw) {
        MessageId id = desk.intake().take(raw, Optional.empty()).id();
        desk.worker().drain();
        return desk.store()
                .<Optional<SubmissionId>>read(tx -> tx.messages().find(id).flatMap(m -> m.submission()))
                .orElseThrow();
    }

    Submission now(SubmissionId id) {
        return desk.store()
                .<Optional<Submission>>read(tx -> tx.submissions().find(id))
                .orElseThrow();
    }

    Ticket ticket(SubmissionId id) {
        return Ticket.of(now(id));
    }

    @Override
    public void close() {
        desk.close();
    }

    private static final class Turned extends Clock {
        private volatile Instant now = MORNING;

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return Clock.fixed(now, zone);
        }
    }
}
