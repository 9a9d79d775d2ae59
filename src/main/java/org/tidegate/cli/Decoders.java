package org.tidegate.cli;

import java.util.List;
import java.util.Optional;
import org.tidegate.casework.DeskConfig;
import org.tidegate.examination.Inspector;
import org.tidegate.rules.Rules;

/** The outside picture decoders that are installed here. */
final class Decoders {

    private Decoders() {}

    /**
     * An inspector with what is installed.
     *
     * @param names of the decoders it has, as delivery facts record them
     */
    record Installed(Inspector inspector, List<String> names) {}

    static Installed installed(Rules rules) {
        return HeifConvert.installed(Optional.ofNullable(System.getenv("PATH")).orElse(""))
                .map(heif -> new Installed(new Inspector(rules, heif), List.of("heif")))
                .orElseGet(() -> new Installed(new Inspector(rules), List.of()));
    }

    static DeskConfig with(DeskConfig config) {
        Installed here = installed(config.rules());
        return here.names().isEmpty()
                ? config
                : config.withDecoders(here.names()).withInspection(here.inspector()::inspect);
    }
}
