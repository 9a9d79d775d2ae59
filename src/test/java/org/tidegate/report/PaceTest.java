package org.tidegate.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidegate.store.Workload.Act;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.UserId;

/** What a history says of the time that a piece takes. */
class PaceTest {

    private static final Instant NOW = Instant.parse("2026-05-04T08:00:00Z");
    private static final ZoneId LONDON = ZoneId.of("Europe/London");

    private static Act act(String who, int submission, int arrived, int when) {
        return new Act(new UserId(who), new SubmissionId(submission), minute(arrived), minute(when));
    }

    private static Instant minute(int m) {
        return NOW.plus(Duration.ofMinutes(m));
    }

    @Test
    void fromTheEndOfThePieceBeforeOrFromTheArrival() {
        assertThat(Pace.handled(List.of(
                        act("ada", 1, -30, 0), // the first: nobody knows when it began
                        act("ada", 2, -20, 4), // 4 min
                        act("ada", 3, 7, 9), // arrived at 7: 2 min
                        act("ada", 4, -20, 39), // a pause
                        act("ben", 5, -30, 40), // another person's first
                        act("ben", 6, -30, 43)))) // 3 min
                .containsExactly(Duration.ofMinutes(4), Duration.ofMinutes(2), Duration.ofMinutes(3));
    }

    @Test
    void severalActsOnOnePieceAreOnePiece() {
        assertThat(Pace.handled(List.of(
                        act("ada", 1, -30, 0), act("ada", 2, -30, 2), act("ada", 2, -30, 5), act("ada", 3, -30, 6))))
                .containsExactly(Duration.ofMinutes(5), Duration.ofMinutes(1));
    }

    @Test
    void ofNothingNothing() {
        assertThat(Pace.handled(List.of())).isEmpty();
        assertThat(Pace.handled(List.of(act("ada", 1, -30, 0)))).isEmpty();
    }

    @Test
    void arrivalsByTheHourOfTheClinicsDay() {
        List<Double> rates = Pace.byHour(List.of(minute(0), minute(59), minute(60), minute(-1440)), 2, LONDON);
        assertThat(rates.get(9)).isEqualTo(1.5);
        assertThat(rates.get(10)).isEqualTo(0.5);
        assertThat(rates).hasSize(24);
        Pace pace = new Pace(Collections.nCopies(24, 12.0), Duration.ofMinutes(5), 9, 2);
        assertThat(pace.load(NOW, LONDON)).isEqualTo(1.0);
    }
}
