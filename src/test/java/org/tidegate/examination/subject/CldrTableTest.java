package org.tidegate.examination.subject;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** The table inside the program says what the CLDR data of ICU4J says; where it does not, run {@link CldrTableWriter}. */
class CldrTableTest {

    @Test
    void theTableIsWhatIcuKnows() {
        LexiconBuilder table = new LexiconBuilder();
        CldrTable.addTo(table);
        Map<String, Meaning> held = table.meanings();
        Map<String, Meaning> known = CldrTableWriter.meanings();
        assertThat(held.keySet()).isEqualTo(known.keySet());
        held.forEach((word, meaning) -> assertThat(meaning).as(word).isEqualTo(known.get(word)));
    }
}
