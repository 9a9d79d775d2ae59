package org.tidegate.store;

import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.postgresql.ds.PGSimpleDataSource;

/** Brings the tables up to the program's version. */
final class Migration {

    private Migration() {}

    static void run(StoreLocation location) {
        if (location instanceof StoreLocation.Embedded embedded) {
            run(SqliteConnections.writing("jdbc:sqlite:" + embedded.file().toAbsolutePath()), Dialect.SQLITE);
        } else if (location instanceof StoreLocation.Server server) {
            PGSimpleDataSource source = new PGSimpleDataSource();
            source.setUrl(server.url());
            source.setUser(server.user());
            source.setPassword(server.password());
            run(source, Dialect.POSTGRESQL);
        }
    }

    private static void run(DataSource source, Dialect dialect) {
        Flyway.configure(Migration.class.getClassLoader())
                .dataSource(source)
                .locations("classpath:db/migration")
                .placeholders(dialect.types())
                .load()
                .migrate();
    }
}
