package org.tidegate.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tidegate.booking.TestKey;
import org.tidegate.store.PersonLinks.Part;
import org.tidegate.store.Retention.Due;
import org.tidegate.store.Retention.Hold;
import org.tidegate.store.Retention.Term;
import org.tidegate.vault.DiskLayer;
import org.tidegate.vault.DurableFiles;
import org.tidegate.vault.MasterKey;
import org.tidegate.work.MessageId;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;
import org.tidegate.work.UserId;

/** Cassettes by themselves, on SQLite and on PostgreSQL. */
class CropsTest {

    private static final Instant NOW = Instant.parse("2026-05-04T06:30:00Z");
    private static final Cutoffs CUTOFFS =
            new Cutoffs(days(14), days(90), days(60), days(90), days(30), days(400), days(90));

    @TempDir
    Path folder;

    private Store open(StoreLocation location) throws Exception {
        MasterKey master = MasterKey.in(new DurableFiles(new DiskLayer(), folder.resolve("keys")), new SecureRandom());
        return Store.open(location, master, Clock.fixed(NOW, ZoneOffset.UTC));
    }

    private static Instant days(int days) {
        return NOW.minus(Duration.ofDays(days));
    }

    private static MessageId message(Tx tx, String mark, int daysAgo) {
        return StoredRows.message(tx, mark, days(daysAgo));
    }

    private static SubmissionId submission(Tx tx, MessageId message, SubmissionState state) {
        SubmissionId id = SubmissionId.startedBy(message);
        StoredRows.submission(tx, id, message, state, NOW);
        return id;
    }

    private static NewCrop crop(String path, int cassette, String blob) {
        return new NewCrop(path, cassette, "{}", new byte[] {3}, new byte[] {4}, blob, "hash-" + blob);
    }

    private static List<StoredCrop> of(Store store, MessageId id) {
        return store.read(tx -> tx.crops().of(id));
    }

    @ParameterizedTest
    @EnumSource
    void oneCassetteIsKeptOnceAndItsRowGoesWithItsBytes(Databases database) throws Exception {
        try (Store store = open(database.fresh(folder))) {
            MessageId id = store.write(tx -> message(tx, "a", 1));
            assertThat(store.<Boolean>write(tx -> tx.crops().insert(id, crop("2", 0, "one"))))
                    .isTrue();
            assertThat(store.<Boolean>write(tx -> tx.crops().insert(id, crop("2", 0, "again"))))
                    .isFalse();
            assertThat(store.<Boolean>write(tx -> tx.crops().insert(id, crop("2", 1, "two"))))
                    .isTrue();
            assertThat(of(store, id)).extracting(StoredCrop::blob).containsExactly("one", "two");
            assertThat(of(store, id).get(0).wrappedKey().orElseThrow()).containsExactly(3);
            assertThat(store.<Boolean>write(tx -> tx.crops().forget(id))).isTrue();
            assertThat(store.<Boolean>write(tx -> tx.crops().forget(id))).isFalse();
            assertThat(of(store, id)).isEmpty();
            List<StoredCrop> lying = store.read(tx -> tx.crops().undropped(9));
            assertThat(lying)
                    .allSatisfy(
                            c -> assertThat(c.wrappedKey().or(c::wrappedSalt)).isEmpty())
                    .extracting(StoredCrop::blob)
                    .containsExactly("one", "two");
            store.write(tx -> {
                lying.forEach(c -> tx.crops().dropped(c.id()));
                return true;
            });
            assertThat(store.<List<StoredCrop>>read(tx -> tx.crops().undropped(9)))
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void theirTimeIsTheirOwnAndWhatIsNeededIsKept(Databases database) throws Exception {
        try (Store store = open(database.fresh(folder))) {
            MessageId old = store.write(tx -> message(tx, "old", 61));
            MessageId aside = store.write(tx -> message(tx, "aside", 31));
            MessageId young = store.write(tx -> message(tx, "young", 59));
            MessageId open = store.write(tx -> message(tx, "open", 62));
            MessageId held = store.write(tx -> message(tx, "held", 63));
            store.write(tx -> {
                List.of(old, aside, young, open, held)
                        .forEach(m -> tx.crops().insert(m, crop("2", 0, "blob of " + m.value())));
                submission(tx, old, SubmissionState.CLOSED);
                submission(tx, aside, SubmissionState.ASIDE);
                submission(tx, young, SubmissionState.CLOSED);
                submission(tx, open, SubmissionState.HELD);
                SubmissionId disputed = submission(tx, held, SubmissionState.CLOSED);
                tx.retention().hold(new Hold(disputed, "dispute", UserId.DAEMON, NOW));
                tx.messages().forget(old);
                return true;
            });
            assertThat(store.<List<Due>>read(tx -> tx.crops().due(CUTOFFS, 9)))
                    .as("also of a message that is forgotten already")
                    .containsExactly(new Due(old, Term.CASSETTES), new Due(aside, Term.ASIDE));
            assertThat(store.<List<Due>>read(tx -> tx.crops().due(CUTOFFS, 1))).hasSize(1);
            assertThat(store.<Integer>read(tx -> tx.retention().counts().cassettes()))
                    .isEqualTo(5);
        }
    }

    @ParameterizedTest
    @EnumSource
    void whoHadWhichPictureIsKnownAsLongAsItsCassette(Databases database) throws Exception {
        try (Store store = open(database.fresh(folder))) {
            MessageId id = store.write(tx -> message(tx, "a", 1));
            SubmissionId part = SubmissionId.partOf(id, 1);
            store.write(tx -> {
                tx.crops().insert(id, crop("2", 0, "one"));
                submission(tx, id, SubmissionState.CLOSED);
                tx.messages().leave(id, Optional.of(List.of("2")));
                tx.personLinks().part(new Part(part, id, new TestKey("B", 1), List.of("3")), UserId.DAEMON, NOW);
                tx.messages().forget(id);
                return true;
            });
            assertThat(shown(store, SubmissionId.startedBy(id))).contains(List.of("2"));
            assertThat(shown(store, part)).contains(List.of("3"));
            store.write(tx -> tx.crops().forget(id));
            assertThat(shown(store, SubmissionId.startedBy(id))).isEmpty();
            assertThat(shown(store, part)).contains(List.of());
        }
    }

    private static Optional<List<String>> shown(Store store, SubmissionId id) {
        return store.<List<StoredMessage>>read(tx -> tx.messages().ofSubmission(id))
                .get(0)
                .shown();
    }

    @ParameterizedTest
    @EnumSource
    void aStoreOfTheVersionBeforeIsTakenOver(Databases database) throws Exception {
        StoreLocation location = database.fresh(folder);
        before(location, database);
        try (Store store = open(location)) {
            StoredMessage old = store.<Optional<StoredMessage>>read(
                            tx -> tx.messages().find(new MessageId(1)))
                    .orElseThrow();
            assertThat(old.saltedHash()).isEqualTo("hash");
            assertThat(of(store, old.id())).isEmpty();
            assertThat(store.<List<Due>>read(tx -> tx.crops().due(CUTOFFS, 9))).isEmpty();
            assertThat(store.<List<Due>>read(tx -> tx.retention().due(CUTOFFS, 9)))
                    .containsExactly(new Due(old.id(), Term.PICTURES));
            assertThat(store.<Boolean>write(tx -> tx.crops().insert(old.id(), crop("2", 0, "one"))))
                    .isTrue();
        }
    }

    private static void before(StoreLocation location, Databases database) throws Exception {
        Dialect dialect = database == Databases.SQLITE ? Dialect.SQLITE : Dialect.POSTGRESQL;
        String url = location instanceof StoreLocation.Server s
                ? s.url()
                : "jdbc:sqlite:" + ((StoreLocation.Embedded) location).file();
        Flyway.configure(CropsTest.class.getClassLoader())
                .dataSource(url, "postgres", "postgres")
                .locations("classpath:db/migration")
                .placeholders(dialect.types())
                .target("8")
                .load()
                .migrate();
        try (Connection connection = DriverManager.getConnection(url, "postgres", "postgres");
                Statement statement = connection.createStatement()) {
            statement.execute(
                    "INSERT INTO messages (mark, wrapped_key, wrapped_salt, blob, salted_hash, size, taken, shows)"
                            + " SELECT 'm', wrapped, wrapped, 'b', 'hash', 1, " + days(91).toEpochMilli()
                            + ", 'PHOTO' FROM (SELECT " + (database == Databases.SQLITE ? "X'01'" : "'\\x01'::bytea")
                            + " AS wrapped) k");
        }
    }
}
