package org.tidegate.console;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.tidegate.booking.BookReader;
import org.tidegate.booking.BookResult;
import org.tidegate.casework.Desk;
import org.tidegate.casework.DeskConfig;
import org.tidegate.mailbox.SendResult;
import org.tidegate.message.HeaderDate;
import org.tidegate.message.Limits;
import org.tidegate.message.MessageReader;
import org.tidegate.rules.Rules;
import org.tidegate.store.QuarantinedLot;
import org.tidegate.work.Outage;
import org.tidegate.work.Role;
import org.tidegate.work.User;
import org.tidegate.work.UserId;

/** The sample morning behind the pages: a real store and a real server, on a clock that the test puts. */
final class Morning implements AutoCloseable {

    static final String PASSWORD = "a long password";

    /** Made once: it is slow on purpose. */
    private static final String HASH = Passwords.encode(PASSWORD);

    final Desk desk;
    final ConsoleServer console;
    final StandingClock clock;

    private Morning(Desk desk, ConsoleServer console, StandingClock clock) {
        this.desk = desk;
        this.console = console;
        this.clock = clock;
    }

    /** A clock that stands where it was put. */
    static final class StandingClock extends Clock {
        private final AtomicReference<Instant> now = new AtomicReference<>(Instant.EPOCH);

        void put(Instant time) {
            now.set(time);
        }

        @Override
        public Instant instant() {
            return now.get();
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return Clock.fixed(instant(), zone);
        }
    }

    /** A sample message as it came, and when. */
    record Mail(String file, byte[] raw, Instant arrived) {}

    /** Before the first message, with the registers that the sample's truth goes by. */
    static Morning early(Path data) throws IOException {
        Morning morning = until(data, Instant.parse("2026-05-04T06:00:00Z"));
        morning.desk.store().write(tx -> {
            tx.registers()
                    .quarantine(new QuarantinedLot(
                            "SK2604Q", morning.clock.instant(), "control line missing", UserId.DAEMON));
            tx.registers()
                    .add(new Outage(
                            Instant.parse("2026-05-04T11:40:00Z"),
                            Instant.parse("2026-05-04T12:35:00Z"),
                            "power cut at the quay"));
            return true;
        });
        return morning;
    }

    /** The message comes in now, as our server had it, and is examined. */
    void arrives(Mail mail) {
        clock.put(mail.arrived());
        desk.intake().take(mail.raw(), Optional.empty());
        desk.worker().drain();
    }

    /** Every sample message whose name starts with one of those given, taken when it arrived; all of them where none is given. */
    static Morning until(Path data, Instant time, String... names) throws IOException {
        return until(Rules.bundled(), data, time, desk -> {}, names);
    }

    /** The same by other rules. */
    static Morning until(Rules rules, Path data, Instant time, String... names) throws IOException {
        return until(rules, data, time, desk -> {}, names);
    }

    /** The same while nobody is there: what may go out by itself is written and sent. */
    static Morning unattended(Rules rules, Path data, Instant time, String... names) throws IOException {
        return until(
                rules,
                data,
                time,
                desk -> {
                    desk.unattended().work();
                    desk.waking().work();
                    desk.sending(mail -> new SendResult.Accepted()).work();
                },
                names);
    }

    private static Morning until(Rules rules, Path data, Instant time, Consumer<Desk> after, String... names)
            throws IOException {
        StandingClock clock = new StandingClock();
        clock.put(Instant.parse("2026-05-04T06:00:00Z"));
        Desk desk = Desk.open(DeskConfig.embedded(data, rules, clock));
        BookResult.Read book = (BookResult.Read) BookReader.read(Path.of("sample-mailbox/appointments.csv"));
        desk.books().replace(book.book(), UserId.DAEMON);
        for (Mail mail : mails(List.of(names))) {
            if (!mail.arrived().isAfter(time)) {
                clock.put(mail.arrived());
                desk.intake().take(mail.raw(), Optional.empty());
                desk.worker().drain();
                finished(desk, mail);
                after.accept(desk);
            }
        }
        for (Role role : Role.values()) {
            person(desk, role.code(), Set.of(role));
        }
        person(desk, "anna", Set.of(Role.OPERATOR, Role.READER));
        clock.put(time);
        return new Morning(desk, ConsoleServer.start("127.0.0.1", 0, desk, rules, clock), clock);
    }

    /** What broke off would leave a page without its content, long after the reason is gone. */
    private static void finished(Desk desk, Mail mail) {
        long waiting = desk.store().<Long>read(tx -> tx.work().waiting());
        if (waiting > 0) {
            throw new IllegalStateException("the examination of " + mail.file() + " broke off: see the log");
        }
    }

    /** As it was left in that folder. */
    static Morning again(Path data, Instant time) throws IOException {
        Rules rules = Rules.bundled();
        StandingClock clock = new StandingClock();
        clock.put(time);
        Desk desk = Desk.open(DeskConfig.embedded(data, rules, clock));
        return new Morning(desk, ConsoleServer.start("127.0.0.1", 0, desk, rules, clock), clock);
    }

    static void person(Desk desk, String name, Set<Role> roles) {
        User user = new User(new UserId(name), name, roles, HASH, true);
        desk.store().write(tx -> {
            tx.users().save(user);
            return true;
        });
    }

    /** A sample message as it came. */
    static byte[] raw(String file) throws IOException {
        return Files.readAllBytes(Path.of("sample-mailbox", file));
    }

    /** In order of arrival; all where no name is given. */
    static List<Mail> mails(List<String> names) throws IOException {
        try (Stream<Path> files = Files.list(Path.of("sample-mailbox"))) {
            return files.filter(f -> f.toString().endsWith(".eml"))
                    .filter(f -> names.isEmpty()
                            || names.stream()
                                    .anyMatch(n -> f.getFileName().toString().startsWith(n)))
                    .sorted()
                    .map(Morning::mail)
                    .sorted(Comparator.comparing(Mail::arrived))
                    .toList();
        }
    }

    private static Mail mail(Path file) {
        try {
            byte[] raw = Files.readAllBytes(file);
            Instant arrived = MessageReader.read(raw, Limits.standard()).envelope().hops().stream()
                    .flatMap(h -> h.time().stream())
                    .map(HeaderDate::instant)
                    .findFirst()
                    .orElse(Instant.EPOCH);
            return new Mail(file.getFileName().toString(), raw, arrived);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        console.close();
        desk.close();
    }
}
