package org.tidegate.rules;

import java.util.Optional;

@Doc("What a participant reads about one discrepancy.")
public record Wording(
        @Doc("What is wrong and what to do.") Template tell,

        @Doc("Until when it still counts; left out where nothing can be done in time.") @Requires("until")
        Optional<Template> until,

        @Doc("What follows if it is too late.") Template otherwise) {}
