package org.tidegate.rules;

import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** The copy of the rules on the class path. */
record BundledFiles() implements RuleFiles {

    @Override
    public Optional<byte[]> read(String name) throws IOException {
        try (var in = BundledFiles.class.getResourceAsStream("/rules/" + name)) {
            return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
        }
    }

    @Override
    public List<String> names() {
        return List.of();
    }
}
