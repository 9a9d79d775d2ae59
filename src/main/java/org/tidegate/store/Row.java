package org.tidegate.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;

/** One row of a result, read by column name. */
final class Row {

    private final ResultSet result;

    Row(ResultSet result) {
        this.result = result;
    }

    /** Makes a value of a row. */
    @FunctionalInterface
    interface Reader<T> {
        T read(Row row) throws SQLException;
    }

    String text(String column) throws SQLException {
        return result.getString(column);
    }

    Optional<String> maybeText(String column) throws SQLException {
        return Optional.ofNullable(result.getString(column));
    }

    long number(String column) throws SQLException {
        return result.getLong(column);
    }

    int small(String column) throws SQLException {
        return result.getInt(column);
    }

    Optional<Long> maybeNumber(String column) throws SQLException {
        long value = result.getLong(column);
        return result.wasNull() ? Optional.empty() : Optional.of(value);
    }

    boolean flag(String column) throws SQLException {
        return result.getInt(column) != 0;
    }

    Instant instant(String column) throws SQLException {
        return Instant.ofEpochMilli(result.getLong(column));
    }

    Optional<Instant> maybeInstant(String column) throws SQLException {
        return maybeNumber(column).map(Instant::ofEpochMilli);
    }

    byte[] bytes(String column) throws SQLException {
        return result.getBytes(column);
    }

    Optional<byte[]> maybeBytes(String column) throws SQLException {
        return Optional.ofNullable(result.getBytes(column));
    }
}
