package org.tidegate.console;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How often signing in failed, by name and by address. From the third failure of a name on, each doubles the wait, up to a quarter of an
 * hour; an address, behind which many may sit, has more patience. Remembers a bounded number of both.
 */
final class Attempts {

    private static final int FREE_FOR_NAME = 3;
    private static final int FREE_FOR_ADDRESS = 20;
    private static final int REMEMBERED = 10_000;
    private static final int MOST_DOUBLINGS = 10;
    private static final Duration LONGEST = Duration.ofMinutes(15);

    private final Clock clock;
    private final Map<String, Failures> failures = new LinkedHashMap<>() {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Failures> eldest) {
            return size() > REMEMBERED;
        }
    };

    Attempts(Clock clock) {
        this.clock = clock;
    }

    private record Failures(int count, Instant last) {}

    synchronized boolean mustWait(String name, String address) {
        return waits("name " + name, FREE_FOR_NAME) || waits("address " + address, FREE_FOR_ADDRESS);
    }

    synchronized void failed(String name, String address) {
        count("name " + name);
        count("address " + address);
    }

    /** A right password forgives the name, not the address: others may still be guessing from there. */
    synchronized void succeeded(String name) {
        failures.remove("name " + name);
    }

    private boolean waits(String key, int free) {
        Failures known = failures.get(key);
        return known != null
                && known.count() >= free
                && clock.instant().isBefore(known.last().plus(wait(known.count() - free)));
    }

    static Duration wait(int beyond) {
        Duration doubled = Duration.ofSeconds(1L << Math.min(MOST_DOUBLINGS, beyond + 1));
        return doubled.compareTo(LONGEST) > 0 ? LONGEST : doubled;
    }

    private void count(String key) {
        Failures known = failures.remove(key);
        boolean recent = known != null && !clock.instant().isAfter(known.last().plus(LONGEST));
        failures.put(key, new Failures(recent && known != null ? known.count() + 1 : 1, clock.instant()));
    }
}
