package org.tidegate.rules;

import java.util.List;

@Doc("The words by which a letter tells a result. Each result letter says its own and no other; nothing else says any.")
public record ResultWords(
        @Doc("As the negative letter says it.") String negative,
        @Doc("As the positive letter says it.") String positive,
        @Doc("As the invalid letter says it.") String invalid) {

    List<String> all() {
        return List.of(negative, positive, invalid);
    }
}
