package org.tidegate.examination.linkage;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidegate.booking.Appointment;
import org.tidegate.booking.TestKey;
import org.tidegate.booking.TestRecord;

/**
 * Open tests behind blocking keys, so that a statement is compared with few of them however many there are. An entry is one
 * long: 40 bits of a key's hash above 24 bits of the test's rank by slot start; a hash collision costs a needless comparison,
 * never a wrong result.
 */
public final class TestIndex {

    /** More tests than this do not fit the rank's bits. */
    public static final int MOST_TESTS = 1 << 24;

    private static final int RANK_BITS = 24;
    private static final int MOST_NAMESAKES = 1_000;
    private static final int MOST_AT_ADDRESS = 4_096;

    /** Of a key that more tests bear, the rest are not looked at: alone it tells next to nothing. */
    private static final int MOST_BEARERS = 10_000;

    private final TestRecord[] tests;
    private final long[] starts;
    private final long[] entries;
    private final Duration longest;

    private TestIndex(TestRecord[] tests, long[] starts, long[] entries, Duration longest) {
        this.tests = tests;
        this.starts = starts;
        this.entries = entries;
        this.longest = longest;
    }

    /** @throws IllegalArgumentException for more than {@link #MOST_TESTS} tests */
    public static TestIndex of(List<TestRecord> open) {
        if (open.size() > MOST_TESTS) {
            throw new IllegalArgumentException("More than " + MOST_TESTS + " open tests");
        }
        TestRecord[] tests = open.toArray(TestRecord[]::new);
        Arrays.sort(
                tests,
                Comparator.comparing(
                                (TestRecord t) -> t.appointment().slotStart().toInstant())
                        .thenComparing(t -> t.appointment().ref())
                        .thenComparing(TestRecord::attempt));
        long[] starts = new long[tests.length];
        long[][] keys = new long[tests.length][];
        Duration longest = Duration.ZERO;
        for (int rank = 0; rank < tests.length; rank++) {
            Appointment a = tests[rank].appointment();
            starts[rank] = a.slotStart().toEpochSecond();
            int ranked = rank;
            keys[rank] = BlockingKeys.of(tests[rank])
                    .distinct()
                    .mapToLong(k -> entry(k, ranked))
                    .toArray();
            Duration length = Duration.between(a.slotStart(), a.slotEnd());
            longest = length.compareTo(longest) > 0 ? length : longest;
        }
        long[] entries = Stream.of(keys).flatMapToLong(Arrays::stream).toArray();
        Arrays.sort(entries);
        return new TestIndex(tests, starts, entries, longest);
    }

    public int size() {
        return tests.length;
    }

    /** Bytes that the index itself holds, the test records apart. */
    public long bytes() {
        return 8L * (entries.length + starts.length) + 4L * tests.length;
    }

    TestRecord test(int rank) {
        return tests[rank];
    }

    Optional<TestRecord> find(TestKey key) {
        String reference = BlockingKeys.reference(key.ref());
        Bearers of = bearers(reference, new Range(0, tests.length));
        return Arrays.stream(entries, of.from(), of.to())
                .mapToObj(e -> tests[(int) (e & (MOST_TESTS - 1))])
                .filter(t -> t.key().equals(key))
                .findFirst();
    }

    /** Ranks of the tests whose slot begins no later than {@code latest} and ends no earlier than {@code earliest}. */
    Range open(Instant earliest, Instant latest) {
        int from = lowerBound(starts, earliest.minus(longest).getEpochSecond());
        int to = lowerBound(starts, latest.getEpochSecond() + 1);
        return new Range(from, Math.max(from, to));
    }

    /** Ranks from {@code from} (inclusive) to {@code to} (exclusive). */
    record Range(int from, int to) {
        int size() {
            return to - from;
        }
    }

    /**
     * Ranks of the tests in the range that share the most telling keys with a statement, at most {@code most}. A key tells the
     * more the fewer bear it, as log2 of the share of the range.
     */
    int[] likeliest(Stream<String> keys, Range range, int most) {
        Map<Integer, Double> telling = new HashMap<>();
        keys.distinct()
                .map(key -> bearers(key, range))
                .sorted(Comparator.comparingInt(Bearers::size).thenComparingLong(Bearers::first))
                .forEach(b -> tell(b, Weights.log2((range.size() + 1.0) / Math.max(1, b.size())), telling, most));
        return telling.entrySet().stream()
                .sorted(Map.Entry.<Integer, Double>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey()))
                .limit(most)
                .mapToInt(Map.Entry::getKey)
                .toArray();
    }

    /** Where the entries of a key lie that are in the range: its first entry, and positions from (inclusive) to (exclusive). */
    private record Bearers(long first, int from, int to) {
        int size() {
            return to - from;
        }
    }

    private Bearers bearers(String key, Range range) {
        return new Bearers(
                entry(key, 0),
                lowerBound(entries, entry(key, range.from())),
                lowerBound(entries, entry(key, range.to())));
    }

    /** Once enough tests are found by rarer keys, a commoner key only tells between them. */
    private void tell(Bearers bearers, double tells, Map<Integer, Double> telling, int most) {
        if (telling.size() >= most) {
            telling.replaceAll((rank, sum) -> bears(bearers, rank) ? sum + tells : sum);
            return;
        }
        int to = Math.min(bearers.to(), bearers.from() + MOST_BEARERS);
        for (int i = bearers.from(); i < to; i++) {
            telling.merge((int) (entries[i] & (MOST_TESTS - 1)), tells, Double::sum);
        }
    }

    private boolean bears(Bearers bearers, int rank) {
        return Arrays.binarySearch(entries, bearers.from(), bearers.to(), bearers.first() | rank) >= 0;
    }

    /** How many differently named persons are booked under an address, counted up to {@code most}. */
    int personsAt(String address, int most) {
        return (int) bookedUnder(address)
                .map(t -> t.appointment().fullName().toLowerCase(Locale.ROOT)
                        + t.appointment().dateOfBirth())
                .distinct()
                .limit(most)
                .count();
    }

    /** Tests booked under an address, whenever they are; of a busy one only the first {@value #MOST_AT_ADDRESS} in order of time. */
    Stream<TestRecord> bookedUnder(String address) {
        String key = BlockingKeys.address(address);
        int from = lowerBound(entries, entry(key, 0));
        return Arrays.stream(entries, from, entries.length)
                .takeWhile(e -> e >>> RANK_BITS == entry(key, 0) >>> RANK_BITS)
                .limit(MOST_AT_ADDRESS)
                .mapToObj(e -> tests[(int) (e & (MOST_TESTS - 1))])
                .filter(t -> t.appointment()
                        .email()
                        .filter(address::equalsIgnoreCase)
                        .isPresent());
    }

    /** Appointments under the same name as this one, whenever they are; itself included. */
    List<Appointment> namesakes(Appointment of) {
        String first = PersonName.of(of.fullName()).tokens().stream()
                .flatMap(BlockingKeys::sounds)
                .findFirst()
                .orElse("");
        int[] found = likeliest(Stream.of(first), new Range(0, tests.length), MOST_NAMESAKES);
        return Arrays.stream(found)
                .mapToObj(rank -> tests[rank].appointment())
                .filter(a -> a.fullName().equalsIgnoreCase(of.fullName()))
                .toList();
    }

    private static long entry(String key, int rank) {
        long hash = 1125899906842597L;
        for (int i = 0; i < key.length(); i++) {
            hash = 31 * hash + key.charAt(i);
        }
        hash ^= hash >>> 32;
        hash *= 0x9E3779B97F4A7C15L;
        return (hash >>> (RANK_BITS + 1)) << RANK_BITS | rank;
    }

    private static int lowerBound(long[] sorted, long value) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted[middle] < value) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
