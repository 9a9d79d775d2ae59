package org.tidegate.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.SQLException;

/** A pool of connections to PostgreSQL. */
final class ServerConnections implements Connections {

    private static final int CONNECTIONS = 8;

    private final HikariDataSource pool;

    ServerConnections(StoreLocation.Server location) {
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl(location.url());
        config.setUsername(location.user());
        config.setPassword(location.password());
        config.setMaximumPoolSize(CONNECTIONS);
        config.setPoolName("store");
        pool = new HikariDataSource(config);
    }

    @Override
    public Dialect dialect() {
        return Dialect.POSTGRESQL;
    }

    @Override
    public Connection forWriting() throws SQLException {
        Connection connection = pool.getConnection();
        connection.setAutoCommit(false);
        return connection;
    }

    @Override
    public Connection forReading() throws SQLException {
        Connection connection = forWriting();
        connection.setReadOnly(true);
        return connection;
    }

    @Override
    public void commit(Connection connection) throws SQLException {
        connection.commit();
    }

    @Override
    public void rollback(Connection connection) throws SQLException {
        connection.rollback();
    }

    @Override
    public void release(Connection connection) throws SQLException {
        connection.close();
    }

    @Override
    public void close() {
        pool.close();
    }
}
