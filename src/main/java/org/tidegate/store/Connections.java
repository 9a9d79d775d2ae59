package org.tidegate.store;

import java.sql.Connection;
import java.sql.SQLException;

/** Where transactions get their connections. */
interface Connections extends AutoCloseable {

    Dialect dialect();

    /** A connection inside a fresh transaction that may write. */
    Connection forWriting() throws SQLException;

    /** A connection that only reads. */
    Connection forReading() throws SQLException;

    /** Makes the writing transaction last. */
    void commit(Connection connection) throws SQLException;

    /** Undoes the transaction; it lasts in no part. */
    void rollback(Connection connection) throws SQLException;

    /** Gives back a connection whose transaction has ended. */
    void release(Connection connection) throws SQLException;

    @Override
    void close();
}
