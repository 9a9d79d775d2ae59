package org.tidegate.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidegate.work.SubmissionId;

/** Small queues, reckoned by hand. */
class ProjectionTest {

    private static final Instant NOW = Instant.parse("2026-05-04T08:00:00Z");
    private static final Instant END = NOW.plus(Duration.ofHours(12));
    private static final Duration PIECE = Duration.ofMinutes(10);

    private static Instant at(int minutes) {
        return NOW.plus(Duration.ofMinutes(minutes));
    }

    /** Waits already, promised by then. */
    private static Piece waiting(int id, int rank, int promised) {
        return new Piece(Optional.of(new SubmissionId(id)), rank, at(-20), at(promised), Optional.empty());
    }

    private static List<Piece> six() {
        List<Piece> all = new ArrayList<>();
        for (int i = 1; i <= 6; i++) {
            all.add(waiting(i, 2, 5 + 10 * i));
        }
        return all;
    }

    @ParameterizedTest(name = "{0} people: clear after {1} min, {2} broken")
    @CsvSource(textBlock = """
            1, 60, 0
            2, 30, 0
            3, 20, 0
            6, 10, 0
            7, 10, 0
            """)
    void sixPiecesOfTenMinutes(int people, int clear, int broken) {
        Projection run = Projection.run(six(), people, PIECE, NOW, END);
        assertThat(run.clear()).contains(at(clear));
        assertThat(run.broken(NOW, END)).isEqualTo(broken);
        assertThat(run.done()).hasSize(6);
    }

    @Test
    void nobodyClearsNothing() {
        Projection run = Projection.run(six(), 0, PIECE, NOW, END);
        assertThat(run.clear()).isEmpty();
        assertThat(run.waiting()).hasSize(6);
        assertThat(run.broken(NOW, END)).isEqualTo(6);
    }

    @Test
    void anEmptyQueueIsClearNow() {
        assertThat(Projection.run(List.of(), 1, PIECE, NOW, END).clear()).contains(NOW);
    }

    @Test
    void theOrderIsTheQueuesOwn() {
        List<Piece> mixed = List.of(waiting(1, 3, -5), waiting(2, 2, 30), waiting(3, 1, 25), waiting(4, 0, 60));
        assertThat(Projection.run(mixed, 1, PIECE, NOW, END).done())
                .extracting(d -> d.piece().id().orElseThrow().value())
                .containsExactly(4L, 3L, 2L, 1L);
    }

    @Test
    void whatIsBrokenAlreadyIsNotBrokenAgain() {
        Projection run = Projection.run(List.of(waiting(1, 3, -5), waiting(2, 3, 8)), 1, PIECE, NOW, END);
        assertThat(run.broken(NOW, END)).isEqualTo(1);
    }

    @Test
    void embarkationBreaksAPromiseToo() {
        Piece embarks = new Piece(Optional.empty(), 2, NOW, at(60), Optional.of(at(9)));
        assertThat(Projection.run(List.of(embarks), 1, PIECE, NOW, END).broken(NOW, END))
                .isEqualTo(1);
    }

    /** Arrivals every 5 minutes, a piece takes 10: one person is overrun, two just keep up, three have time. */
    @Test
    void arrivalsFasterThanTheWork() {
        List<Piece> all = new ArrayList<>();
        for (int m = 0; m < 720; m += 5) {
            all.add(Piece.expected(at(m), at(m + 30)));
        }
        assertThat(Projection.run(all, 1, PIECE, NOW, END).clear()).isEmpty();
        assertThat(Projection.run(all, 1, PIECE, NOW, END).broken(NOW, END)).isPositive();
        assertThat(Projection.run(all, 2, PIECE, NOW, END).broken(NOW, END)).isZero();
        assertThat(Projection.run(all, 3, PIECE, NOW, END).clear()).contains(at(10));
    }

    @Test
    void whatComesTooLateForTheRunIsNoBrokenPromise() {
        Piece late = Piece.expected(END.minusSeconds(60), END.plusSeconds(1800));
        List<Piece> all = new ArrayList<>(six());
        all.add(late);
        assertThat(Projection.run(all, 0, PIECE, NOW, END).broken(NOW, END)).isEqualTo(6);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            10,  20
            61,  75
            120, 145
            """)
    void honestTimesHaveAMargin(int expected, int told) {
        assertThat(Outlook.honest(at(expected), NOW)).isEqualTo(at(told));
    }
}
