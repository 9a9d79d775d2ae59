package org.tidegate.thirdhand;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Things on a support.
 *
 * @param flat sheets and hands below the rest
 * @param things in the order they were put down
 * @param over what was held over them last
 */
record Arrangement(Support support, List<Placed> flat, List<Placed> things, List<Placed> over) {

    Arrangement {
        flat = List.copyOf(flat);
        things = List.copyOf(things);
        over = List.copyOf(over);
    }

    static Arrangement bare(Support support) {
        return new Arrangement(support, List.of(), List.of(), List.of());
    }

    /** Whether a hand holds the things over the support, and thus out of its folds. */
    boolean held() {
        return flat.stream().anyMatch(p -> p.thing() instanceof Palm);
    }

    Arrangement with(Placed thing) {
        return new Arrangement(support, flat, added(things, thing), over);
    }

    /** Puts a thing below those that are there already. */
    Arrangement withFirst(Placed thing) {
        return new Arrangement(
                support, flat, Stream.concat(Stream.of(thing), things.stream()).toList(), over);
    }

    Arrangement withFlat(Placed sheet) {
        return new Arrangement(support, added(flat, sheet), things, over);
    }

    Arrangement withOver(List<Placed> fingers) {
        return new Arrangement(support, flat, things, fingers);
    }

    private static List<Placed> added(List<Placed> list, Placed one) {
        List<Placed> longer = new ArrayList<>(list);
        longer.add(one);
        return longer;
    }

    boolean free(Placed thing, double gap) {
        return things.stream().noneMatch(other -> thing.hits(other, gap));
    }

    /** What may lie on a thing; a hand reaches over the edge of a document beside the cassette it holds. */
    List<Placed> above(Placed placed) {
        List<Placed> above = new ArrayList<>(things.subList(things.indexOf(placed) + 1, things.size()));
        above.addAll(over);
        if (placed.thing() instanceof Document) {
            flat.stream().filter(p -> p.thing() instanceof Palm).forEach(above::add);
        }
        return above;
    }
}
