package org.tidegate.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.error.Mark;

/** Collects what is wrong, and remembers where each bound record stands so that later checks can point at it. */
final class Faults {

    private record Place(String file, int line, int column) {}

    private static final Comparator<RuleFault> BY_PLACE = Comparator.comparing(RuleFault::file)
            .thenComparingInt(RuleFault::line)
            .thenComparingInt(RuleFault::column);

    private final List<RuleFault> found = new ArrayList<>();
    private final IdentityHashMap<Object, Place> places = new IdentityHashMap<>();

    void at(String file, Mark mark, String what, String hint) {
        found.add(new RuleFault(file, mark.getLine() + 1, mark.getColumn() + 1, what, hint));
    }

    void file(String file, String what, String hint) {
        found.add(new RuleFault(file, 0, 0, what, hint));
    }

    void remember(Object bound, String file, Mark mark) {
        places.put(bound, new Place(file, mark.getLine() + 1, mark.getColumn() + 1));
    }

    /** A fault of a record that was bound earlier. */
    void in(Object bound, String what, String hint) {
        Place p = Optional.ofNullable(places.get(bound)).orElse(new Place("rules", 0, 0));
        found.add(new RuleFault(p.file(), p.line(), p.column(), what, hint));
    }

    boolean none() {
        return found.isEmpty();
    }

    List<RuleFault> sorted() {
        return found.stream().sorted(BY_PLACE).toList();
    }
}
