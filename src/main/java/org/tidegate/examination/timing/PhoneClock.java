package org.tidegate.examination.timing;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.tidegate.finding.Event;

/** How wrong a phone's clock is, where the network bounds it. */
final class PhoneClock {

    private PhoneClock() {}

    /** Present where every belief sets the phone's own word aside: then the clock is proven wrong, by what the tolerances leave. */
    static Optional<TimeJudgement.PhoneClockError> error(String phone, List<Belief> beliefs) {
        long least = Network.FREE;
        long most = -Network.FREE;
        for (Belief belief : beliefs) {
            Network network = belief.tolerant();
            if (!network.events().knows(Event.DEVICE_ZERO)) {
                return Optional.empty();
            }
            least = Math.min(least, network.least(Event.DEVICE_ZERO, Event.EPOCH));
            most = Math.max(most, network.most(Event.DEVICE_ZERO, Event.EPOCH));
        }
        boolean proven = least > 0 || most < 0;
        boolean bounded = least > -Network.FREE && most < Network.FREE;
        return proven && bounded
                ? Optional.of(
                        new TimeJudgement.PhoneClockError(phone, Duration.ofMillis(least), Duration.ofMillis(most)))
                : Optional.empty();
    }
}
