package org.tidegate.examination.timing;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tidegate.finding.Clue;
import org.tidegate.finding.WindowVerdict;

/**
 * What the clocks say about one submission.
 *
 * @param photo verdict on the governing photo of the cassette; empty where no message carries one
 * @param governing which photo that is
 * @param side on which side of the reading window the photo lies; present exactly where {@code photo} is outside
 * @param sent verdict on the message with the cassette, or on a supplement that came too late
 * @param sentSoftened the message came late, but its journey or the phone's clock put the sending before the deadline
 * @param outage a registered outage of ours explains the lateness
 * @param conflict clocks that even the tolerances cannot reconcile
 * @param statedDiffers how the participant's stated test time misses the clinic's record, for the operator; it narrows nothing
 * @param noCaptureTime the governing photo has no capture time at all
 * @param phoneClock how wrong the phone's clock provably is
 * @param windows the protocol's windows as clock times
 */
public record TimeJudgement(
        Optional<WindowVerdict> photo,
        Optional<PhotoRef> governing,
        Optional<Side> side,
        WindowVerdict sent,
        boolean sentSoftened,
        boolean outage,
        Optional<Conflict> conflict,
        Optional<String> statedDiffers,
        boolean noCaptureTime,
        Optional<PhoneClockError> phoneClock,
        ClockTimes windows) {

    /** Indexes of the message in the case and of the picture in its findings. */
    public record PhotoRef(int message, int picture) {}

    public enum Side {
        BEFORE_TEST,
        EARLY,
        LATE
    }

    /**
     * @param clues of the negative cycle, the one set aside first
     * @param words what contradicts what, for the operator
     * @param decides whether a check stays undecided because of it
     */
    public record Conflict(List<Clue> clues, String words, boolean decides) {

        public Conflict {
            clues = List.copyOf(clues);
        }
    }

    /**
     * The clock ran ahead by at least {@code least} and at most {@code most}; negative values mean that it ran behind, an empty one
     * that nothing bounds it.
     *
     * @param phone make and model
     */
    public record PhoneClockError(String phone, Optional<Duration> least, Optional<Duration> most) {

        /** {@code The clock of the Kestrel K5 is 6 min 55 s to 9 min 57 s fast.} */
        public String words() {
            return "The clock of the " + phone + " is " + span() + ".";
        }

        /** {@code 6 min 55 s to 9 min 57 s fast}. */
        public String span() {
            Duration near = (fast() ? least : most).orElse(Duration.ZERO);
            String span = (fast() ? most : least)
                    .map(far -> Wording.span(near) + " to " + Wording.span(far))
                    .orElse("at least " + Wording.span(near));
            return span + (fast() ? " fast" : " slow");
        }

        public boolean fast() {
            return least.filter(d -> !d.isNegative()).isPresent();
        }
    }

    /**
     * @param from when the photo may first be taken
     * @param until when at the latest
     * @param sendBy when the message must have arrived
     */
    public record ClockTimes(Instant from, Instant until, Instant sendBy) {}
}
