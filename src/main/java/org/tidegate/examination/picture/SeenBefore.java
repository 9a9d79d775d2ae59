package org.tidegate.examination.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.tidegate.finding.PictureFinding.Fingerprints;

/**
 * Finds pictures that were seen before, as the same bytes or as nearly the same view: compressed again, resized, brightened, turned, mirrored
 * or cropped at the edges. Owners are numbers that the caller gives, 0 or more. Not safe for use by several threads at once.
 */
public final class SeenBefore {

    private static final long NOBODY = -1;

    private final int within;
    private final HashIndex wholes = new HashIndex();
    private final HashIndex centres = new HashIndex();
    private final ExactIndex exact = new ExactIndex();

    /** Owners of all pictures, and of those with something to see. */
    private final LongColumn owners = new LongColumn();

    private final LongColumn viewOwners = new LongColumn();

    /** One earlier picture; distance is the finer bits that differ in the nearest of {@link Fingerprints}' views, 0 also for the same bytes. */
    public record Seen(long owner, int distance) {}

    /**
     * @param within finer bits of 256 that may differ where pictures count as the same
     */
    public SeenBefore(int within) {
        this.within = within;
    }

    public void add(long owner, Fingerprints picture) {
        exact.add(picture.exact());
        owners.add(owner);
        if (picture.whole().isPresent() && picture.centre().isPresent()) {
            viewOwners.add(owner);
            wholes.add(HashWords.of(picture.whole().get()));
            centres.add(HashWords.of(picture.centre().get()));
        }
    }

    /** Forgets every picture of an owner; linear in the number of pictures. */
    public void forget(long owner) {
        forget(owner, owners);
        forget(owner, viewOwners);
    }

    private static void forget(long owner, LongColumn all) {
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i) == owner) {
                all.set(i, NOBODY);
            }
        }
    }

    /** Earlier pictures, nearest first, an owner named once. */
    public List<Seen> find(Fingerprints picture) {
        Map<Integer, Integer> near = new TreeMap<>();
        picture.whole().ifPresent(hex -> wholes.allNear(HashWords.of(hex), within, near));
        picture.turned().forEach(hex -> wholes.mostNear(HashWords.of(hex), within, near));
        picture.cropped().forEach(hex -> centres.mostNear(HashWords.of(hex), within, near));
        List<Seen> seen = new ArrayList<>();
        exact.same(picture.exact(), e -> seen.add(new Seen(owners.get(e), 0)));
        near.forEach((entry, distance) -> seen.add(new Seen(viewOwners.get(entry), distance)));
        seen.sort(Comparator.comparingInt(Seen::distance).thenComparingLong(Seen::owner));
        Set<Long> known = new HashSet<>(Set.of(NOBODY));
        return seen.stream().filter(s -> known.add(s.owner())).toList();
    }
}
