package org.tidegate.rules;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.tidegate.finding.DiscrepancyCode;

/**
 * One immutable, validated set of rules. Each component but the hash is one file of the folder, {@code timing.yaml} and so on; texts are a file a language.
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
        LimitRules limits,
        UnattendedRules unattended,
        RoleRules roles,
        RetentionRules retention,
        ServiceRules service,
        HourRules hours,
        Texts texts) {

    /** Reads a rules folder; all faults at once. */
    public static RulesResult load(Path folder) {
        return RulesReader.read(folder);
    }

    /**
     * The rules that came with the program.
     *
     * @throws IllegalStateException where that copy is damaged; the build's tests load it
     */
    public static Rules bundled() {
        RulesResult result = RulesReader.bundled();
        if (result instanceof RulesResult.Loaded loaded) {
            return loaded.rules();
        }
        throw new IllegalStateException("the rules inside the program are damaged: " + result);
    }

    public Optional<Protocol> protocol(String kit) {
        return protocols.stream().filter(p -> p.kit().equals(kit)).findFirst();
    }

    public Optional<Clinic> clinic(String code) {
        return clinics.stream().filter(c -> c.code().equals(code)).findFirst();
    }

    public Optional<CheckRule> check(DiscrepancyCode code) {
        return checks.stream().filter(c -> c.code() == code).findFirst();
    }
}
