package org.tidegate.cli;

import java.util.List;
import java.util.Optional;
import org.tidegate.casework.DeskConfig;
import org.tidegate.examination.Inspector;

/** The outside picture decoders that are installed here. */
final class Decoders {

    private Decoders() {}

    static DeskConfig with(DeskConfig config) {
        Optional<HeifConvert> heif =
                HeifConvert.installed(Optional.ofNullable(System.getenv("PATH")).orElse(""));
        if (heif.isEmpty()) {
            return config;
        }
        Inspector inspector = new Inspector(config.rules(), heif.get());
        return config.withDecoders(List.of("heif")).withInspection(inspector::inspect);
    }
}
