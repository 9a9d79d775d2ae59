package org.tidegate.examination.linkage;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidegate.rules.MatchingRules;
import org.tidegate.rules.MatchingRules.AgreementLevel;

/** Looks up m and u of the rules' levels (Fellegi, Sunter 1969). */
final class Weights {

    private final Map<String, Map<String, AgreementLevel>> fields = new LinkedHashMap<>();

    Weights(MatchingRules rules) {
        for (MatchingRules.Field field : rules.fields()) {
            Map<String, AgreementLevel> levels = new LinkedHashMap<>();
            field.levels().forEach(level -> levels.put(level.name(), level));
            fields.put(field.name(), levels);
        }
    }

    /** log2(m/u) of a level. */
    static double log2(double odds) {
        return Math.log(odds) / Math.log(2);
    }

    /** The explanation's line for a level; empty where the rules do not weigh it. */
    Optional<FieldWeight> of(String field, String level, String words) {
        return level(field, level).map(l -> new FieldWeight(field, level, log2(l.m() / l.u()), words));
    }

    Optional<AgreementLevel> level(String field, String level) {
        return Optional.ofNullable(fields.getOrDefault(field, Map.of()).get(level));
    }

    List<AgreementLevel> levels(String field) {
        return List.copyOf(fields.getOrDefault(field, Map.of()).values());
    }
}
