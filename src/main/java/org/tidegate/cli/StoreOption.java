package org.tidegate.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import org.jspecify.annotations.Nullable;
import org.tidegate.casework.Desk;
import org.tidegate.casework.DeskConfig;
import org.tidegate.rules.Rules;
import org.tidegate.store.StoreException;
import org.tidegate.store.StoreLocation;
import picocli.CommandLine.Option;

/** {@code --data} and {@code --database}, shared by every command that works on a store. */
final class StoreOption {

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "Data folder: keys, and with the embedded store everything. Default: ${DEFAULT-VALUE}.",
            defaultValue = "tidegate-data")
    private Path data = Path.of("tidegate-data");

    @Option(
            names = "--database",
            paramLabel = "URL",
            description =
                    "JDBC address of a PostgreSQL database instead of the embedded store; user and password from TIDEGATE_DB_USER and TIDEGATE_DB_PASSWORD.")
    private @Nullable String database;

    Desk open(Rules rules) {
        return open(rules, Clock.systemUTC());
    }

    Desk open(Rules rules, Clock clock) {
        try {
            DeskConfig config = Decoders.with(DeskConfig.of(data, location(), rules, clock));
            return Desk.open(config);
        } catch (IOException | StoreException e) {
            throw new Refusal("the store in " + data + " cannot be opened: " + e.getMessage(), e);
        }
    }

    private StoreLocation location() {
        if (database == null) {
            return new StoreLocation.Embedded(data.resolve("tidegate.db"));
        }
        return new StoreLocation.Server(database, environment("TIDEGATE_DB_USER"), environment("TIDEGATE_DB_PASSWORD"));
    }

    private static String environment(String name) {
        String value = System.getenv(name);
        if (value == null) {
            throw new Refusal("--database needs the environment variable " + name + ".");
        }
        return value;
    }
}
