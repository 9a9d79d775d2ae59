package org.tidegate.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidegate.vault.DiskLayer;
import org.tidegate.vault.DurableFiles;
import org.tidegate.vault.MasterKey;
import org.tidegate.work.UserId;

/** The embedded database beside an upkeep command, at its limits, and with the promises that it is asked for. */
class SharedFileTest {

    @TempDir
    Path folder;

    private MasterKey master;

    @BeforeEach
    void key() throws Exception {
        master = MasterKey.in(new DurableFiles(new DiskLayer(), folder.resolve("keys")), new SecureRandom());
    }

    /** As the daemon and a command on one data folder: the same locks hold between two processes and two stores. */
    @Test
    void twoWriteInTurns() throws Exception {
        try (Store daemon = open("tidegate.db");
                Store command = open("tidegate.db")) {
            for (int i = 0; i < 20; i++) {
                record(i % 2 == 0 ? daemon : command, "turn");
            }
            assertThat(daemon.<Integer>read(tx -> tx.ledger().leaves(0, 100).size()))
                    .isEqualTo(20);
        }
    }

    @Test
    void aFailedTransactionLeavesNothingBehindAndTheNextOneWorks() throws Exception {
        try (Store store = open("tidegate.db")) {
            assertThatThrownBy(() -> store.write(tx -> {
                        tx.record("never", UserId.DAEMON, List.of(), Map.of());
                        tx.update("INSERT INTO locks (name) VALUES ('half')");
                        throw new IllegalStateException("in the middle");
                    }))
                    .hasMessage("in the middle");
            record(store, "after");
            assertThat(store.<Integer>read(tx -> tx.ledger().leaves(0, 100).size()))
                    .isEqualTo(1);
            assertThat(store.<Integer>read(tx -> tx.list("SELECT name FROM locks", r -> r.text("name"))
                            .size()))
                    .isEqualTo(1);
        }
    }

    @Test
    void aFullDatabaseSaysSoAndGoesOnWhenThereIsRoom() throws Exception {
        try (Store store = open("tidegate.db?max_page_count=90")) {
            assertThatThrownBy(() -> {
                        for (int i = 0; i < 1000; i++) {
                            record(store, "x".repeat(2000));
                        }
                    })
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("full");
        }
        try (Store store = open("tidegate.db")) {
            int before = store.<Integer>read(tx -> tx.ledger().leaves(0, 2000).size());
            record(store, "room again");
            assertThat(store.<Integer>read(tx -> tx.ledger().leaves(0, 2000).size()))
                    .isEqualTo(before + 1);
        }
    }

    /** What a commit promises stands in sqlite.org/pragma.html: 2 is FULL, "safe against power loss" with WAL. */
    @ParameterizedTest
    @CsvSource({"journal_mode, wal", "synchronous, 2", "foreign_keys, 1", "secure_delete, 1"})
    void theWriterAsksForDurability(String pragma, String value) throws Exception {
        Path file = folder.resolve("tidegate.db");
        open("tidegate.db").close();
        try (Connection c = SqliteConnections.writing("jdbc:sqlite:" + file).getConnection();
                Statement s = c.createStatement();
                ResultSet r = s.executeQuery("PRAGMA " + pragma)) {
            assertThat(r.getString(1)).isEqualTo(value);
        }
    }

    private static void record(Store store, String kind) {
        store.write(tx -> {
            tx.record(kind, UserId.DAEMON, List.of(), Map.of());
            return true;
        });
    }

    private Store open(String name) throws Exception {
        return Store.open(new StoreLocation.Embedded(folder.resolve(name)), master, Clock.systemUTC());
    }
}
