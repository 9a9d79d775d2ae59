package org.tidegate.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tidegate.Needs;

/** The two databases that every store test runs on. */
public enum Databases {
    SQLITE {
        @Override
        public StoreLocation fresh(Path folder) {
            return new StoreLocation.Embedded(folder.resolve("tidegate.db"));
        }
    },
    POSTGRESQL {
        @Override
        public StoreLocation fresh(Path folder) throws IOException, SQLException {
            return new StoreLocation.Server(
                    Running.server().getJdbcUrl("postgres", newDatabase()), "postgres", "postgres");
        }
    };

    /** An empty database of this kind. */
    public abstract StoreLocation fresh(Path folder) throws IOException, SQLException;

    private static String newDatabase() throws IOException, SQLException {
        String name = "t" + Long.toString(System.nanoTime(), 36);
        try (Connection c = Running.server().getPostgresDatabase().getConnection()) {
            c.createStatement().execute("CREATE DATABASE " + name);
        }
        return name;
    }

    /** One server for all tests of the run. */
    private static final class Running {

        private static @Nullable EmbeddedPostgres server;

        static synchronized EmbeddedPostgres server() throws IOException {
            Needs.that(platformHasServer(), "PostgreSQL binaries for this platform");
            if (server == null) {
                server = EmbeddedPostgres.builder()
                        .setPGStartupWait(Duration.ofMinutes(1))
                        .start();
            }
            return server;
        }

        private static boolean platformHasServer() {
            String os = System.getProperty("os.name").toLowerCase(Locale.ROOT);
            return os.contains("linux") && System.getProperty("os.arch").equals("amd64");
        }
    }
}
