package org.tidegate.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The rules that the program ships are valid, from the folder and from the class path alike. */
class LiveRulesTest {

    @Test
    void theFolderLoads() {
        assertThat(Rules.load(Path.of("rules"))).isInstanceOf(RulesResult.Loaded.class);
    }

    @Test
    void theCopyInsideTheProgramIsTheSame() {
        assertThat(Rules.load(Path.of("rules"))).isEqualTo(new RulesResult.Loaded(Rules.bundled()));
    }
}
