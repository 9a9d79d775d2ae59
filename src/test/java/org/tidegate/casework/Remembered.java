package org.tidegate.casework;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.tidegate.examination.Inspected;
import org.tidegate.finding.DeliveryFacts;
import org.tidegate.rules.Rules;

/** The real inspection, under one key for all tests, so that the same photo is looked into once and not for each of them. */
final class Remembered {

    private static final byte[] KEY = HexFormat.of().parseHex("5a".repeat(32));
    private static final Map<Asked, Inspected> KNOWN = new ConcurrentHashMap<>();

    private record Asked(String rules, String raw, Optional<Instant> delivered) {}

    private Remembered() {}

    static Inspection by(Rules rules) {
        Inspection real = Inspection.by(rules);
        return (raw, facts) -> KNOWN.computeIfAbsent(
                new Asked(rules.hash(), new String(raw, StandardCharsets.ISO_8859_1), facts.delivered()),
                asked -> real.inspect(
                        raw, new DeliveryFacts(facts.delivered(), KEY, facts.decoders(), facts.dkimKeys())));
    }
}
