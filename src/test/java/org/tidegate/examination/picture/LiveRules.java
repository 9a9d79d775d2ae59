package org.tidegate.examination.picture;

import org.tidegate.rules.Rules;
import org.tidegate.rules.RulesReader;
import org.tidegate.rules.RulesResult;

/** The project's own rules. */
final class LiveRules {

    private LiveRules() {}

    static Rules read() {
        if (RulesReader.bundled() instanceof RulesResult.Loaded loaded) {
            return loaded.rules();
        }
        throw new IllegalStateException("The bundled rules have faults: " + RulesReader.bundled());
    }
}
