package org.tidegate.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ConditionTest {

    private static final Map<String, Object> FACTS =
            Map.of("urgent", true, "nature", "personal", "cassettes", 2L, "edited", false, "small", 1);

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            e.urgent                                     ; true
            !e.urgent                                    ; false
            e.nature == 'personal' && e.cassettes > 1    ; true
            e.cassettes > 2 || e.edited                  ; false
            e.small == 1                                 ; true
            e.nature in ['bounce', 'personal']           ; true
            has(e.id_agrees) && !e.id_agrees             ; false
            false                                        ; false
            """)
    void holds(String text, boolean expected) {
        assertThat(Condition.of(text).holds(FACTS)).as(text).isEqualTo(expected);
    }

    @ParameterizedTest
    @ValueSource(strings = {"e.urgent &&", "f.urgent", "1 + 1", "'yes'", ""})
    void refusesWhatIsNoCondition(String text) {
        assertThatThrownBy(() -> Condition.of(text)).as(text).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void saysWhichFactIsMissing() {
        assertThatThrownBy(() -> Condition.of("e.absent").holds(FACTS))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("e.absent");
    }
}
