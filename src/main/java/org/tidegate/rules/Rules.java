package org.tidegate.rules;

import java.util.List;
import java.util.Optional;

/**
 * One immutable, validated set of rules.
 *
 * @param hash SHA-256 of the files' contents, hex: how a ledger names the set
 */
public record Rules(
        String hash,
        List<Clinic> clinics,
        List<Protocol> protocols,
        TimingRules timing,
        MatchingRules matching,
        PictureRules pictures,
        SubjectRules subjects,
        List<CheckRule> checks,
        LimitRules limits) {

    public Optional<Protocol> protocol(String kit) {
        return protocols.stream().filter(p -> p.kit().equals(kit)).findFirst();
    }

    public Optional<Clinic> clinic(String code) {
        return clinics.stream().filter(c -> c.code().equals(code)).findFirst();
    }
}
