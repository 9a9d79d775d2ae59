package org.tidegate.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.concurrent.locks.ReentrantLock;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConnection;
import org.sqlite.SQLiteDataSource;

/**
 * One connection that writes, several that cannot. Between transactions the writer holds no lock, so that another process (an
 * upkeep command beside the daemon) can write too.
 */
final class SqliteConnections implements Connections {

    private static final int READERS = 4;
    private static final int BUSY_MILLIS = 30_000;

    private final ReentrantLock writing = new ReentrantLock(true);
    private final SQLiteDataSource source;
    private volatile Connection writer;
    private final HikariDataSource readers;

    SqliteConnections(Path file) throws SQLException {
        String url = "jdbc:sqlite:" + file.toAbsolutePath();
        source = writing(url);
        writer = source.getConnection();
        HikariConfig pool = new HikariConfig();
        pool.setDataSource(reading(url));
        pool.setConnectionInitSql("PRAGMA query_only = 1");
        pool.setAutoCommit(false);
        pool.setMaximumPoolSize(READERS);
        pool.setPoolName("store-readers");
        readers = new HikariDataSource(pool);
    }

    static SQLiteDataSource writing(String url) {
        SQLiteConfig config = common();
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        config.setPragma(SQLiteConfig.Pragma.SECURE_DELETE, "true");
        return source(config, url);
    }

    private static SQLiteDataSource reading(String url) {
        return source(common(), url);
    }

    private static SQLiteConfig common() {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        config.setBusyTimeout(BUSY_MILLIS);
        return config;
    }

    private static SQLiteDataSource source(SQLiteConfig config, String url) {
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl(url);
        return source;
    }

    @Override
    public Dialect dialect() {
        return Dialect.SQLITE;
    }

    @Override
    public Connection forWriting() throws SQLException {
        writing.lock();
        try {
            writer.setAutoCommit(false);
            return writer;
        } catch (SQLException e) {
            try {
                renewWriter();
            } finally {
                writing.unlock();
            }
            throw e;
        }
    }

    @Override
    public Connection forReading() throws SQLException {
        return readers.getConnection();
    }

    /** The driver would begin the next transaction at once, and keep the database locked, if it were told to commit. */
    @Override
    public void commit(Connection connection) throws SQLException {
        connection.setAutoCommit(true);
    }

    @Override
    public void rollback(Connection connection) throws SQLException {
        if (connection instanceof SQLiteConnection) {
            renewWriter();
        } else {
            connection.rollback();
        }
    }

    /** Closing undoes what is open; the driver's own state after a failure is not to be relied on. */
    private void renewWriter() throws SQLException {
        writer.close();
        writer = source.getConnection();
    }

    @Override
    public void release(Connection connection) throws SQLException {
        if (connection instanceof SQLiteConnection) {
            writing.unlock();
        } else {
            connection.close();
        }
    }

    @Override
    public void close() {
        readers.close();
        try {
            writer.close();
        } catch (SQLException e) {
            throw Tx.failed(e);
        }
    }
}
