package org.tidegate.cli;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The moment at which a command looks at the store. */
final class AtOption {

    @Option(
            names = "--at",
            paramLabel = "TIME",
            description = "As it stands at that time: RFC 3339, or a wall time of the clinic. Default: now.")
    private @Nullable String at;

    /** A clock that stands at the moment. */
    Clock clock(ZoneId zone) {
        return Clock.fixed(
                Optional.ofNullable(at).map(t -> GivenTime.of(t, zone)).orElseGet(Instant::now), zone);
    }
}
