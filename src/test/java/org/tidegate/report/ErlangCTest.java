package org.tidegate.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.PriorityQueue;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class ErlangCTest {

    @ParameterizedTest(name = "{0} people, {1} erlangs ({4})")
    @CsvFileSource(files = "shared/check-values/erlang.csv", numLinesToSkip = 1)
    void publishedValues(int servers, double load, double blocked, double waits, String source) {
        assertThat(ErlangC.blocked(servers, load)).as(source).isCloseTo(blocked, within(1e-9));
        assertThat(ErlangC.waits(servers, load)).as(source).isCloseTo(waits, within(1e-9));
    }

    /** The exercise of the last row of the table, printed widely: 84.59 % are taken up within 15 s. */
    @Test
    void theExercise() {
        Duration call = Duration.ofMinutes(4);
        assertThat(ErlangC.takenUpWithin(55, 48, call, Duration.ofSeconds(15))).isCloseTo(0.8459, within(5e-5));
        assertThat(ErlangC.peopleFor(48, call, Duration.ofSeconds(15), 0.845, 100))
                .isEqualTo(55);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            0, 0,   0
            1, 0,   0
            0, 1,   1
            3, 3,   1
            3, 7.5, 1
            1, 1e9, 1
            """)
    void atTheEdges(int servers, double load, double waits) {
        assertThat(ErlangC.waits(servers, load)).isEqualTo(waits);
    }

    @Test
    void overloadIsNeverTakenUpInTime() {
        Duration hour = Duration.ofHours(1);
        assertThat(ErlangC.takenUpWithin(2, 2, hour, hour)).isZero();
        assertThat(ErlangC.takenUpWithin(0, 0, hour, hour)).isEqualTo(1);
        assertThat(ErlangC.peopleFor(50, hour, hour, 0.95, 10)).isEqualTo(11);
        assertThat(ErlangC.peopleFor(0, hour, hour, 0.95, 10)).isZero();
    }

    @ParameterizedTest
    @CsvSource({"-1, 1", "1, -0.1", "1, NaN", "1, Infinity"})
    void nonsenseIsRefused(int servers, double load) {
        assertThatThrownBy(() -> ErlangC.waits(servers, load)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ErlangC.blocked(servers, load)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aHandlingTimeIsLongerThanNothing() {
        assertThatThrownBy(() -> ErlangC.takenUpWithin(1, 0.5, Duration.ZERO, Duration.ZERO))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** The formula against a queue that is played out: arrivals and handling times at random, seeded. */
    @ParameterizedTest
    @CsvSource({"1, 0.5", "3, 2", "8, 6"})
    void aSimulatedQueue(int servers, double load) {
        Random random = new Random(20260504);
        PriorityQueue<Double> free = new PriorityQueue<>();
        for (int i = 0; i < servers; i++) {
            free.add(0.0);
        }
        int pieces = 200_000;
        int waited = 0;
        double now = 0;
        for (int i = 0; i < pieces; i++) {
            now += -Math.log(1 - random.nextDouble()) / load;
            double begins = Math.max(now, free.remove());
            waited += begins > now ? 1 : 0;
            free.add(begins - Math.log(1 - random.nextDouble()));
        }
        assertThat((double) waited / pieces).isCloseTo(ErlangC.waits(servers, load), within(0.015));
    }
}
