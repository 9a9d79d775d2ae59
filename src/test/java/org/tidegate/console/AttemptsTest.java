package org.tidegate.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AttemptsTest {

    @ParameterizedTest(name = "{0} failures beyond the free ones: wait {1}")
    @CsvSource({"0, PT2S", "1, PT4S", "4, PT32S", "8, PT8M32S", "9, PT15M", "1000, PT15M"})
    void theWaitDoublesUpToAQuarterOfAnHour(int beyond, Duration wait) {
        assertThat(Attempts.wait(beyond)).isEqualTo(wait);
    }
}
