package org.tidegate.casework;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tidegate.booking.BookReader;
import org.tidegate.booking.BookResult;
import org.tidegate.mailbox.SendResult;
import org.tidegate.rules.Rules;
import org.tidegate.rules.RulesFolder;
import org.tidegate.store.Databases;
import org.tidegate.store.StoreLocation;
import org.tidegate.vault.MasterKey;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.PolicyAct;
import org.tidegate.work.UserId;

/** Two machines run the policy, the waking and the sending on one store at once: nobody is written to twice. */
class TwoDaemonsTest {

    private static final List<String> FILES = List.of(
            "24-worried.eml",
            "29-forwarded-by-colleague.eml",
            "30-other-clinic.eml",
            "32-missing-id-first.eml",
            "09-nickname.eml",
            "40-no-photo.eml");

    private static final Instant NIGHT = Instant.parse("2026-05-04T08:57:00Z");

    @TempDir
    Path folder;

    private final AtomicReference<Instant> now = new AtomicReference<>(NIGHT);
    private final Queue<String> sent = new ConcurrentLinkedQueue<>();

    @ParameterizedTest
    @EnumSource
    void nobodyIsAnsweredTwice(Databases database) throws Exception {
        Rules rules = RulesFolder.night(folder.resolve("rules"));
        Path keys = Files.createDirectories(folder.resolve("keys"));
        Files.writeString(keys.resolve(MasterKey.FILE), Base64.getEncoder().encodeToString(new byte[32]));
        StoreLocation location = database.fresh(folder);
        try (Desk one = Desk.open(DeskConfig.of(folder, location, rules, clock()));
                Desk other = Desk.open(DeskConfig.of(folder, location, rules, clock()))) {
            take(one);
            List<PolicyAct> acts = atOnce(one, other, d -> d.unattended().work());
            List<?> calls = atOnce(one, other, d -> d.waking().work());
            now.set(NIGHT.plus(Duration.ofMinutes(1)));
            atOnce(one, other, this::sendAll);
            assertThat(acts).hasSize(FILES.size());
            assertThat(acts.stream().map(PolicyAct::submission)).doesNotHaveDuplicates();
            assertThat(calls).hasSize(1);
            List<OutboxLetter> letters = one.outbox().written(Instant.EPOCH, NIGHT.plusSeconds(600));
            assertThat(letters.stream().map(l -> l.text().orElseThrow().to())).doesNotHaveDuplicates();
            assertThat(sent).hasSize(letters.size()).doesNotHaveDuplicates();
            Kept.ledger(other.store());
        }
    }

    private static void take(Desk desk) throws IOException {
        BookResult.Read book = (BookResult.Read) BookReader.read(Path.of("sample-mailbox/appointments.csv"));
        desk.books().replace(book.book(), UserId.DAEMON);
        for (String file : FILES) {
            desk.intake().take(Files.readAllBytes(Path.of("sample-mailbox", file)), Optional.empty());
        }
        desk.worker().drain();
    }

    private List<String> sendAll(Desk desk) {
        Sending sending = desk.sending(mail -> {
            String raw = new String(mail.raw(), StandardCharsets.UTF_8);
            sent.add(raw.lines()
                    .filter(l -> l.startsWith("Message-ID:"))
                    .findFirst()
                    .orElseThrow());
            return new SendResult.Accepted();
        });
        List<String> steps = new ArrayList<>();
        for (Optional<Sending.Step> s = sending.work(); s.isPresent(); s = sending.work()) {
            steps.add(s.get().state().code());
        }
        return steps;
    }

    private interface Work<T> {
        List<T> of(Desk desk);
    }

    private static <T> List<T> atOnce(Desk one, Desk other, Work<T> work) throws Exception {
        CyclicBarrier start = new CyclicBarrier(2);
        ExecutorService threads = Executors.newFixedThreadPool(2);
        try {
            List<Future<List<T>>> both = new ArrayList<>();
            for (Desk desk : List.of(one, other)) {
                Callable<List<T>> run = () -> {
                    start.await();
                    return work.of(desk);
                };
                both.add(threads.submit(run));
            }
            List<T> all = new ArrayList<>(both.get(0).get());
            all.addAll(both.get(1).get());
            return all;
        } finally {
            threads.shutdownNow();
        }
    }

    private Clock clock() {
        return new Clock() {
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
        };
    }
}
