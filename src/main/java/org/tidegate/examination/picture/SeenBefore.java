package org.tidegate.examination.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tidegate.finding.PictureFinding.Fingerprints;

/**
 * Finds pictures that were seen before, as the same bytes or as nearly the same view: compressed again, resized, brightened, turned, mirrored
 * or cropped at the edges. Not safe for use by several threads at once.
 *
 * @param <T> whose picture it is, as the caller knows it
 */
public final class SeenBefore<T> {

    private final int within;
    private final HashIndex wholes = new HashIndex();
    private final HashIndex centres = new HashIndex();
    private final List<@Nullable T> owners = new ArrayList<>();
    private final Map<String, List<T>> exact = new HashMap<>();

    /** One earlier picture; distance is the least of {@link Fingerprints}' views, 0 also for the same bytes. */
    public record Seen<T>(T owner, int distance) {}

    /**
     * @param within distance up to which pictures count as the same: differing coarse bits of 256 plus half of the differing finer ones
     */
    public SeenBefore(int within) {
        this.within = within;
    }

    public void add(T owner, Fingerprints picture) {
        exact.computeIfAbsent(picture.exact(), e -> new ArrayList<>()).add(owner);
        if (picture.whole().isPresent() && picture.centre().isPresent()) {
            owners.add(Objects.requireNonNull(owner));
            wholes.add(HashWords.of(picture.whole().get()));
            centres.add(HashWords.of(picture.centre().get()));
        }
    }

    /** Forgets every picture of an owner; linear in the number of pictures. */
    public void forget(T owner) {
        owners.replaceAll(o -> owner.equals(o) ? null : o);
        exact.values().forEach(list -> list.removeIf(owner::equals));
        exact.values().removeIf(List::isEmpty);
    }

    /** Earlier pictures, nearest first, an owner named once. */
    public List<Seen<T>> find(Fingerprints picture) {
        Map<Integer, Integer> near = new TreeMap<>();
        picture.whole().ifPresent(hex -> wholes.allNear(HashWords.of(hex), within, near));
        picture.turned().forEach(hex -> wholes.mostNear(HashWords.of(hex), within, near));
        picture.cropped().forEach(hex -> centres.mostNear(HashWords.of(hex), within, near));
        List<Seen<T>> seen = new ArrayList<>();
        exact.getOrDefault(picture.exact(), List.of()).forEach(o -> seen.add(new Seen<>(o, 0)));
        near.forEach((entry, distance) ->
                Optional.ofNullable(owners.get(entry)).ifPresent(o -> seen.add(new Seen<>(o, distance))));
        seen.sort(Comparator.comparingInt(Seen::distance));
        Set<T> known = new HashSet<>();
        return seen.stream().filter(s -> known.add(s.owner())).toList();
    }
}
