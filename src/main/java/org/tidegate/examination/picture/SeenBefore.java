package org.tidegate.examination.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.tidegate.finding.PictureFinding.Fingerprints;

/**
 * Finds pictures that were seen before, as the same bytes or as nearly the same view. Multi-index hashing (Norouzi, Punjani, Fleet 2012): of 16
 * parts of two hashes within a distance d, at least one differs in no more than d / 16 bits, so looking up each part and its close neighbours
 * misses nothing. Not safe for use by several threads at once.
 *
 * @param <T> whose picture it is, as the caller knows it
 */
public final class SeenBefore<T> {

    private static final int PARTS = 16;
    private static final int PART_BITS = PerceptualHash.BITS / PARTS;

    private final int within;
    private final int[] flips;
    private final List<PartIndex> parts = new ArrayList<>();
    private final List<@Nullable T> owners = new ArrayList<>();
    private final Map<String, List<T>> exact = new HashMap<>();
    private long[] words = new long[1024];

    /** One earlier picture; distance is the number of differing bits, 0 also for the same bytes. */
    public record Seen<T>(T owner, int distance) {}

    /**
     * @param within Hamming distance of 256-bit hashes up to which pictures count as the same; up to 63
     */
    public SeenBefore(int within) {
        if (within < 0 || within > 63) {
            throw new IllegalArgumentException("within is " + within + "; it must be 0 to 63.");
        }
        this.within = within;
        this.flips = flips(within / PARTS);
        for (int p = 0; p < PARTS; p++) {
            parts.add(new PartIndex(1 << PART_BITS));
        }
    }

    public void add(T owner, Fingerprints picture) {
        exact.computeIfAbsent(picture.exact(), e -> new ArrayList<>()).add(owner);
        picture.perceptual().ifPresent(hex -> add(owner, HashWords.of(hex)));
    }

    /** Forgets every picture of an owner; linear in the number of pictures. */
    public void forget(T owner) {
        owners.replaceAll(o -> owner.equals(o) ? null : o);
        exact.values().forEach(list -> list.removeIf(owner::equals));
        exact.values().removeIf(List::isEmpty);
    }

    /** Earlier pictures, nearest first, an owner named once; mirrored and turned copies are found too. */
    public List<Seen<T>> find(Fingerprints picture) {
        Map<Integer, Integer> near = new TreeMap<>();
        picture.perceptual().ifPresent(hex -> look(HashWords.of(hex), near));
        picture.mirrored().forEach(hex -> look(HashWords.of(hex), near));
        List<Seen<T>> seen = new ArrayList<>();
        exact.getOrDefault(picture.exact(), List.of()).forEach(o -> seen.add(new Seen<>(o, 0)));
        near.forEach((entry, distance) ->
                Optional.ofNullable(owners.get(entry)).ifPresent(o -> seen.add(new Seen<>(o, distance))));
        seen.sort(Comparator.comparingInt(Seen::distance));
        return onceEach(seen);
    }

    private static <T> List<Seen<T>> onceEach(List<Seen<T>> sorted) {
        List<T> known = new ArrayList<>();
        List<Seen<T>> once = new ArrayList<>();
        for (Seen<T> s : sorted) {
            if (!known.contains(s.owner())) {
                known.add(s.owner());
                once.add(s);
            }
        }
        return once;
    }

    private void add(T owner, long[] hash) {
        int entry = owners.size();
        owners.add(Objects.requireNonNull(owner));
        if (words.length < 4 * (entry + 1)) {
            words = Arrays.copyOf(words, words.length * 2);
        }
        System.arraycopy(hash, 0, words, 4 * entry, 4);
        for (int p = 0; p < PARTS; p++) {
            parts.get(p).add(HashWords.part(hash, p), entry);
        }
    }

    private void look(long[] hash, Map<Integer, Integer> near) {
        for (int p = 0; p < PARTS; p++) {
            int part = HashWords.part(hash, p);
            PartIndex index = parts.get(p);
            for (int flip : flips) {
                for (int e = index.first(part ^ flip); e >= 0; e = index.next(e)) {
                    int d = HashWords.distance(hash, words, 4 * e);
                    if (d <= within) {
                        near.merge(e, d, Math::min);
                    }
                }
            }
        }
    }

    /** Every pattern of at most so many flipped bits. */
    private static int[] flips(int most) {
        return IntStream.range(0, 1 << PART_BITS)
                .filter(i -> Integer.bitCount(i) <= most)
                .toArray();
    }
}
