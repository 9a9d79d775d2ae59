package org.tidegate.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tidegate.ledger.audit.AuditResult;
import org.tidegate.ledger.audit.LedgerAudit;
import org.tidegate.ledger.audit.StoredHead;
import org.tidegate.vault.DiskLayer;
import org.tidegate.vault.DurableFiles;
import org.tidegate.vault.MasterKey;
import org.tidegate.work.MessageId;
import org.tidegate.work.Role;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;
import org.tidegate.work.User;
import org.tidegate.work.UserId;
import org.tidegate.work.WorkItem;

/** The same behaviour on SQLite and on PostgreSQL. */
class StoreTest {

    private static final Instant NOW = Instant.parse("2026-05-04T06:30:00Z");

    @TempDir
    Path folder;

    private Store open(StoreLocation location) throws IOException {
        MasterKey master = MasterKey.in(new DurableFiles(new DiskLayer(), folder.resolve("keys")), new SecureRandom());
        return Store.open(location, master, Clock.fixed(NOW, ZoneOffset.UTC));
    }

    private static NewMessage message(String mark) {
        return new NewMessage(
                mark, new byte[] {1}, new byte[] {2}, "blob-" + mark, "hash-" + mark, 10, NOW, Optional.empty());
    }

    @ParameterizedTest
    @EnumSource
    void oneMarkIsOneMessageAndSightingsAreCountedOnce(Databases database) throws Exception {
        try (Store store = open(database.fresh(folder))) {
            MessageId first =
                    store.write(tx -> tx.messages().insert(message("a"))).orElseThrow();
            Optional<MessageId> second = store.write(tx -> tx.messages().insert(message("a")));
            assertThat(second).isEmpty();
            for (long uid : List.of(5L, 5L, 6L)) {
                store.write(tx -> tx.messages().sighted(first, "acc", "INBOX", 1, uid, NOW));
            }
            assertThat(store.<Long>read(tx -> tx.messages().sightings(first))).isEqualTo(2);
            Optional<MessageId> known = store.read(tx -> tx.messages().byMark("a"));
            assertThat(known).contains(first);
        }
    }

    @ParameterizedTest
    @EnumSource
    void aFailedTransactionLeavesNeitherRowsNorEvents(Databases database) throws Exception {
        try (Store store = open(database.fresh(folder))) {
            assertThatThrownBy(() -> store.write(tx -> {
                        tx.messages().insert(message("a"));
                        tx.record("message-taken", UserId.DAEMON, List.of(), Map.of());
                        throw new IllegalStateException("on purpose");
                    }))
                    .hasMessage("on purpose");
            assertThat(store.<Long>read(tx -> tx.messages().count())).isZero();
            assertThat(store.<Long>read(tx -> tx.ledger().size())).isZero();
        }
    }

    @ParameterizedTest
    @EnumSource
    void readersCannotWrite(Databases database) throws Exception {
        try (Store store = open(database.fresh(folder))) {
            assertThatThrownBy(() -> store.read(tx -> tx.messages().insert(message("a"))))
                    .isInstanceOf(StoreException.class);
        }
    }

    @ParameterizedTest
    @EnumSource
    void manyWritersMakeOneLedgerThatVerifies(Databases database) throws Exception {
        StoreLocation location = database.fresh(folder);
        try (Store store = open(location)) {
            inParallel(
                    4,
                    15,
                    worker -> store.write(tx -> {
                        tx.record(
                                "note",
                                UserId.DAEMON,
                                List.of("worker-" + worker),
                                Map.of("worker", Integer.toString(worker)));
                        tx.record("note", UserId.DAEMON, List.of(), Map.of());
                        return worker;
                    }));
        }
        try (Store store = open(location)) {
            AuditResult audit = audit(store);
            assertThat(audit.faults()).isEmpty();
            assertThat(audit.leaves()).isEqualTo(120);
            assertThat(audit.heads()).isEqualTo(60);
        }
    }

    @ParameterizedTest
    @EnumSource
    void workIsDrawnOnceByDueAndIsFreeAgainAfterItsTime(Databases database) throws Exception {
        try (Store store = open(database.fresh(folder))) {
            for (long key = 0; key < 40; key++) {
                long k = key;
                store.write(tx -> add(tx, k, NOW.minusSeconds(k)));
            }
            store.write(tx -> add(tx, 3, NOW));
            assertThat(draw(store, NOW).orElseThrow().key()).isEqualTo(39);
            List<Long> drawn = new ArrayList<>();
            for (Future<Optional<WorkItem>> f : inParallel(4, 10, worker -> draw(store, NOW))) {
                f.get().ifPresent(i -> drawn.add(i.key()));
            }
            assertThat(drawn).hasSize(39).doesNotHaveDuplicates();
            assertThat(draw(store, NOW)).isEmpty();
            WorkItem again = draw(store, NOW.plusSeconds(61)).orElseThrow();
            assertThat(again.tries()).isEqualTo(1);
            assertThat(store.<Long>read(tx -> tx.work().waiting())).isEqualTo(40);
            store.write(tx -> {
                tx.work().done(again);
                return 0;
            });
            assertThat(store.<Long>read(tx -> tx.work().waiting())).isEqualTo(39);
        }
    }

    @ParameterizedTest
    @EnumSource
    void aSubmissionChangedAgainstAnOldVersionIsRefused(Databases database) throws Exception {
        try (Store store = open(database.fresh(folder))) {
            MessageId m = store.write(tx -> tx.messages().insert(message("a"))).orElseThrow();
            assertThat(store.<Boolean>write(tx -> tx.submissions().save(submission(m, SubmissionState.HELD, 1))))
                    .isTrue();
            assertThat(store.<Boolean>write(tx -> tx.submissions().save(submission(m, SubmissionState.WAITING, 2))))
                    .isTrue();
            assertThat(store.<Boolean>write(tx -> tx.submissions().save(submission(m, SubmissionState.CLOSED, 2))))
                    .isFalse();
            Optional<Submission> found = store.read(tx -> tx.submissions().find(SubmissionId.startedBy(m)));
            assertThat(found).contains(submission(m, SubmissionState.WAITING, 2));
        }
    }

    @ParameterizedTest
    @EnumSource
    void usersComeBackAsSaved(Databases database) throws Exception {
        try (Store store = open(database.fresh(folder))) {
            User user = new User(
                    new UserId("ada"), "Ada", new TreeSet<>(List.of(Role.READER, Role.OPERATOR)), "hash", true);
            for (int i = 0; i < 2; i++) {
                store.write(tx -> {
                    tx.users().save(user);
                    return 0;
                });
            }
            List<User> users = store.read(tx -> tx.users().all());
            assertThat(users).containsExactly(user);
        }
    }

    @ParameterizedTest
    @EnumSource
    void anotherMasterKeyIsRefused(Databases database) throws Exception {
        StoreLocation location = database.fresh(folder);
        open(location).close();
        MasterKey other = MasterKey.in(new DurableFiles(new DiskLayer(), folder.resolve("other")), new SecureRandom());
        assertThatThrownBy(() -> Store.open(location, other, Clock.systemUTC()))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("master key");
    }

    static AuditResult audit(Store store) {
        List<StoredHead> heads = store.read(tx -> tx.ledger().heads()).stream()
                .map(h -> new StoredHead(h.size(), h.root().hex(), h.time().toString(), h.keyId(), h.signature()))
                .toList();
        return LedgerAudit.check(store.read(tx -> tx.ledger().leaves(0, 10_000)), heads, store.publicKey());
    }

    private static int add(Tx tx, long key, Instant due) {
        tx.work().add(WorkItem.Kind.INSPECT, key, due);
        return 0;
    }

    private static Optional<WorkItem> draw(Store store, Instant now) {
        return store.write(tx -> tx.work().draw(now, now.plus(Duration.ofMinutes(1))));
    }

    private static Submission submission(MessageId m, SubmissionState state, int version) {
        return new Submission(
                SubmissionId.startedBy(m),
                state,
                List.of(m),
                Optional.of("SK-1"),
                false,
                NOW,
                NOW.plusSeconds(1800),
                Optional.of(NOW.plusSeconds(600)),
                Optional.empty(),
                1,
                version);
    }

    private static <T> List<Future<T>> inParallel(int workers, int times, IntFunction<T> work)
            throws InterruptedException {
        ExecutorService pool = Executors.newFixedThreadPool(workers);
        List<Callable<T>> tasks = new ArrayList<>();
        for (int i = 0; i < workers * times; i++) {
            int worker = i % workers;
            tasks.add(() -> work.apply(worker));
        }
        List<Future<T>> results = pool.invokeAll(tasks);
        pool.shutdown();
        return results;
    }
}
