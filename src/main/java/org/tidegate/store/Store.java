package org.tidegate.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.function.Function;
import org.flywaydb.core.api.FlywayException;
import org.tidegate.ledger.HeadSigner;
import org.tidegate.vault.MasterKey;

/** Runs work in transactions. May be used by several threads. */
public final class Store implements AutoCloseable {

    private static final String LEDGER_KEY = "ledger-key";

    private final Connections connections;
    private final MasterKey master;
    private final HeadSigner signer;
    private final Clock clock;

    private Store(Connections connections, MasterKey master, Clock clock) throws IOException {
        this.connections = connections;
        this.clock = clock;
        this.master = master;
        this.signer = signer();
    }

    /**
     * Opens the store, bringing its tables up to date.
     *
     * @throws StoreException where the database cannot be reached or is of a newer program
     * @throws IOException where the master key is another than the one that the store was made with
     */
    public static Store open(StoreLocation location, MasterKey master, Clock clock) throws IOException {
        try {
            Migration.run(location);
            Connections connections = location instanceof StoreLocation.Server server
                    ? new ServerConnections(server)
                    : new SqliteConnections(((StoreLocation.Embedded) location).file());
            return over(connections, master, clock);
        } catch (FlywayException | SQLException e) {
            throw new StoreException("The store cannot be opened: " + reason(e), e);
        }
    }

    /** The migration tool wraps what the database said in many lines. */
    private static String reason(Throwable e) {
        Throwable last = e;
        while (last.getCause() != null) {
            last = last.getCause();
        }
        String words = last.getMessage() == null ? last.toString() : last.getMessage();
        return words.lines().findFirst().orElse(words);
    }

    private static Store over(Connections connections, MasterKey master, Clock clock) throws IOException {
        try {
            return new Store(connections, master, clock);
        } catch (IOException | RuntimeException e) {
            connections.close();
            throw e;
        }
    }

    /** Runs one writing transaction; its ledger events are appended and signed as its last statements. */
    public <T> T write(Function<Tx, T> body) {
        return run(true, tx -> {
            T result = body.apply(tx);
            tx.ledger().close(signer, clock.instant().truncatedTo(ChronoUnit.MILLIS));
            return result;
        });
    }

    /** Runs queries that see one state of the store. */
    public <T> T read(Function<Tx, T> body) {
        return run(false, body);
    }

    /** What an auditor checks heads with: base64 of the X.509 form. */
    public String publicKey() {
        return signer.publicKey();
    }

    private <T> T run(boolean writing, Function<Tx, T> body) {
        try {
            Connection connection = writing ? connections.forWriting() : connections.forReading();
            try {
                T result = body.apply(new Tx(connection, connections.dialect(), master));
                if (writing) {
                    connections.commit(connection);
                } else {
                    connections.rollback(connection);
                }
                return result;
            } catch (Throwable e) {
                undo(connection, e);
                throw e;
            } finally {
                connections.release(connection);
            }
        } catch (SQLException e) {
            throw Tx.failed(e);
        }
    }

    private void undo(Connection connection, Throwable cause) {
        try {
            connections.rollback(connection);
        } catch (SQLException e) {
            cause.addSuppressed(e);
        }
    }

    private HeadSigner signer() throws IOException {
        Optional<byte[]> kept = run(true, tx -> {
            byte[] fresh = HeadSigner.generate().encoded().getBytes(StandardCharsets.US_ASCII);
            tx.update(
                    "INSERT INTO secrets (name, wrapped) VALUES (?, ?) ON CONFLICT DO NOTHING",
                    LEDGER_KEY,
                    master.wrap(fresh, LEDGER_KEY));
            return tx.first("SELECT wrapped FROM secrets WHERE name = ?", r -> r.bytes("wrapped"), LEDGER_KEY);
        });
        byte[] wrapped = kept.orElseThrow(() -> new IOException("the store holds no ledger key"));
        return HeadSigner.of(new String(master.unwrap(wrapped, LEDGER_KEY), StandardCharsets.US_ASCII));
    }

    @Override
    public void close() {
        connections.close();
    }
}
