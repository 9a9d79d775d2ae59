package org.tidegate.examination.timing;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.tidegate.finding.Clock;
import org.tidegate.finding.Event;

/** How wrong a phone's clock is, where the network bounds it. */
final class PhoneClock {

    private PhoneClock() {}

    /**
     * Present where every belief proves, all tolerances granted, that the clock is wrong on the same side; the figures are those of
     * the other clocks at their word.
     */
    static Optional<TimeJudgement.PhoneClockError> error(List<Belief> beliefs) {
        if (!beliefs.stream().allMatch(PhoneClock::fast) && !beliefs.stream().allMatch(PhoneClock::slow)) {
            return Optional.empty();
        }
        long least = beliefs.stream().mapToLong(b -> least(b.word())).min().orElse(-Network.FREE);
        long most = beliefs.stream().mapToLong(b -> most(b.word())).max().orElse(Network.FREE);
        return phone(beliefs).map(name -> new TimeJudgement.PhoneClockError(name, bounded(least), bounded(most)));
    }

    private static Optional<Duration> bounded(long millis) {
        return Math.abs(millis) >= Network.FREE ? Optional.empty() : Optional.of(Duration.ofMillis(millis));
    }

    private static boolean fast(Belief belief) {
        return knows(belief.tolerant()) && least(belief.tolerant()) > 0;
    }

    private static boolean slow(Belief belief) {
        return knows(belief.tolerant()) && most(belief.tolerant()) < 0;
    }

    private static boolean knows(Network network) {
        return network.events().knows(Event.DEVICE_ZERO);
    }

    private static long least(Network network) {
        return network.least(Event.DEVICE_ZERO, Event.EPOCH);
    }

    private static long most(Network network) {
        return network.most(Event.DEVICE_ZERO, Event.EPOCH);
    }

    private static Optional<String> phone(List<Belief> beliefs) {
        return beliefs.stream()
                .flatMap(b -> b.contradictions().stream())
                .map(c -> c.setAside().clue().clock())
                .filter(clock -> clock.kind() == Clock.Kind.PHONE)
                .map(Clock::name)
                .findFirst();
    }
}
