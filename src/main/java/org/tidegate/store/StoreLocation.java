package org.tidegate.store;

import java.nio.file.Path;

/** Where the store is. */
public sealed interface StoreLocation {

    /** @param file the SQLite file; its folder exists */
    record Embedded(Path file) implements StoreLocation {}

    /** @param url JDBC address of a PostgreSQL database */
    record Server(String url, String user, String password) implements StoreLocation {}
}
