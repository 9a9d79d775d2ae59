package org.tidegate.rules;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

@Doc("What a participant reads about one discrepancy.")
public record Wording(
        @Doc("What is wrong.") Template tell,

        @Doc("What to do; left out where the participant can do nothing, and not said where it is too late.")
        Optional<Template> please,

        @Doc("Until when it still counts; left out where nothing can be done in time.") @Requires("until")
        Optional<Template> until,

        @Doc("What follows if it is too late.") Template otherwise) {

    private static final String NEW_PHOTO = "photograph_until";

    /** Whether only a new photo helps, which must be taken in the reading window. */
    public boolean asksForNewPhoto() {
        return until.filter(t -> t.placeholders().contains(NEW_PHOTO)).isPresent();
    }

    /** All that may be said. */
    public List<Template> everything() {
        return Stream.of(Stream.of(tell), please.stream(), until.stream(), Stream.of(otherwise))
                .flatMap(t -> t)
                .toList();
    }
}
