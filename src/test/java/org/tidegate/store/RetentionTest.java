package org.tidegate.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tidegate.booking.TestKey;
import org.tidegate.store.PersonLinks.Part;
import org.tidegate.store.Retention.Due;
import org.tidegate.store.Retention.Hold;
import org.tidegate.store.Retention.Shows;
import org.tidegate.store.Retention.Term;
import org.tidegate.vault.DiskLayer;
import org.tidegate.vault.DurableFiles;
import org.tidegate.vault.MasterKey;
import org.tidegate.work.MessageId;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;
import org.tidegate.work.UserId;

/** What falls due, on SQLite and on PostgreSQL. */
class RetentionTest {

    private static final Instant NOW = Instant.parse("2026-05-04T06:30:00Z");
    private static final Instant OLD = NOW.minus(Duration.ofDays(20));

    @TempDir
    Path folder;

    private Store open(Databases database) throws Exception {
        MasterKey master = MasterKey.in(new DurableFiles(new DiskLayer(), folder.resolve("keys")), new SecureRandom());
        return Store.open(database.fresh(folder), master, Clock.fixed(NOW, ZoneOffset.UTC));
    }

    private static Instant days(int days) {
        return NOW.minus(Duration.ofDays(days));
    }

    private static final Cutoffs CUTOFFS =
            new Cutoffs(days(14), days(15), days(15), days(16), days(17), days(18), days(19));

    @ParameterizedTest
    @EnumSource
    void ofASplitMessageEveryShareCountsAndAHoldStandsOverAll(Databases database) throws Exception {
        try (Store store = open(database)) {
            MessageId id = store.write(tx -> StoredRows.message(tx, "a", OLD));
            SubmissionId home = SubmissionId.startedBy(id);
            SubmissionId part = SubmissionId.partOf(id, 1);
            store.write(tx -> {
                tx.retention().shows(id, Shows.IDENTITY);
                StoredRows.submission(tx, home, id, SubmissionState.CLOSED, NOW);
                tx.personLinks().part(new Part(part, id, new TestKey("B", 1), List.of("2")), UserId.DAEMON, NOW);
                StoredRows.submission(tx, part, id, SubmissionState.HELD, NOW);
                return true;
            });
            assertThat(store.<List<Due>>read(tx -> tx.retention().due(CUTOFFS, 9)))
                    .isEmpty();
            assertThat(store.<List<Due>>read(tx -> tx.retention().overdue(CUTOFFS, 9)))
                    .containsExactly(new Due(id, Term.IDENTITY_PICTURES));
            Submission held = store.<Optional<Submission>>read(
                            tx -> tx.submissions().find(part))
                    .orElseThrow();
            assertThat(held.messages()).containsExactly(id);
            assertThat(store.<List<Submission>>read(
                            tx -> tx.submissions().inStates(java.util.Set.of(SubmissionState.HELD))))
                    .containsExactly(held);
            assertThat(store.<Boolean>write(tx -> tx.submissions().save(held.in(SubmissionState.CLOSED))))
                    .isTrue();
            assertThat(store.<Optional<StoredMessage>>read(tx -> tx.messages().find(id))
                            .orElseThrow()
                            .submission())
                    .as("a part takes the message from nobody")
                    .contains(home);
            assertThat(store.<List<Due>>read(tx -> tx.retention().due(CUTOFFS, 9)))
                    .hasSize(1);
            Hold hold = new Hold(part, "dispute", UserId.DAEMON, NOW);
            assertThat(store.<Boolean>write(tx -> tx.retention().hold(hold))).isTrue();
            assertThat(store.<Boolean>write(tx -> tx.retention().hold(hold))).isFalse();
            assertThat(store.<List<Due>>read(tx -> tx.retention().due(CUTOFFS, 9)))
                    .isEmpty();
            assertThat(store.<List<Hold>>read(tx -> tx.retention().holds())).containsExactly(hold);
            assertThat(store.<Integer>read(tx -> tx.retention().dueBy(CUTOFFS))).isEqualTo(1);
        }
    }

    @ParameterizedTest
    @EnumSource
    void keysDaysFingerprintsAndBytesAreFoundInBatches(Databases database) throws Exception {
        try (Store store = open(database)) {
            List<MessageId> ids = store.write(tx -> List.of(
                    StoredRows.message(tx, "a", OLD),
                    StoredRows.message(tx, "b", OLD),
                    StoredRows.message(tx, "c", NOW)));
            store.write(tx -> {
                ids.forEach(id -> {
                    tx.caseKeys().seal(CaseKeys.Scope.CASE, id.value(), "x", "words");
                    tx.links().keepPicture(id, "1", "{}");
                });
                tx.caseKeys()
                        .seal(
                                CaseKeys.Scope.CASE,
                                SubmissionId.partOf(ids.get(0), 1).value(),
                                "x",
                                "words");
                tx.caseKeys()
                        .seal(CaseKeys.Scope.SERVICE, LocalDate.of(2026, 4, 1).toEpochDay(), "x", "words");
                tx.messages().forget(ids.get(1));
                return true;
            });
            assertThat(store.<List<Long>>read(tx -> tx.retention().dueKeys(CaseKeys.Scope.CASE, days(16), 9)))
                    .containsExactly(
                            ids.get(0).value(),
                            ids.get(1).value(),
                            SubmissionId.partOf(ids.get(0), 1).value());
            assertThat(store.<List<Long>>read(tx -> tx.retention().dueKeys(CaseKeys.Scope.CASE, days(16), 1)))
                    .hasSize(1);
            assertThat(store.<List<Long>>read(tx -> tx.retention().dueDays(LocalDate.of(2026, 4, 2), 9)))
                    .hasSize(1);
            assertThat(store.<List<MessageId>>read(tx -> tx.retention().fingerprinted(days(19), 9)))
                    .containsExactly(ids.get(0), ids.get(1));
            assertThat(store.<List<StoredMessage>>read(tx -> tx.retention().undropped(9)))
                    .extracting(StoredMessage::id)
                    .containsExactly(ids.get(1));
        }
    }
}
