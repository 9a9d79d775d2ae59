package org.tidegate.cli;

import java.util.List;
import java.util.Optional;
import org.tidegate.casework.DeskConfig;
import org.tidegate.casework.Inspection;
import org.tidegate.rules.Rules;

/** The outside picture decoders that are installed here. */
final class Decoders {

    private Decoders() {}

    /**
     * How to inspect with what is installed.
     *
     * @param names of the decoders it has, as delivery facts record them
     */
    record Installed(Inspection inspection, List<String> names) {}

    static Installed installed(Rules rules) {
        return HeifConvert.installed(Optional.ofNullable(System.getenv("PATH")).orElse(""))
                .map(heif -> new Installed(Inspection.by(rules, heif), List.of("heif")))
                .orElseGet(() -> new Installed(Inspection.by(rules), List.of()));
    }

    static DeskConfig with(DeskConfig config) {
        Installed here = installed(config.rules());
        return here.names().isEmpty()
                ? config
                : config.withDecoders(here.names()).withInspection(here.inspection());
    }
}
