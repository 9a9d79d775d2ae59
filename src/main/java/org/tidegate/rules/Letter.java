package org.tidegate.rules;

import java.util.List;
import java.util.Set;

/** A letter of named blocks: what its kind must say are its keys, so that none can be forgotten or moved. */
public sealed interface Letter permits PlainLetter, ResultLetter {

    /** Never bears a name or a result. */
    Template subject();

    /** The blocks in the order in which they are read. */
    List<Template> blocks();

    /** The placeholders that can always be filled in this letter, which goes to the booked address only. */
    default Set<String> known() {
        return Template.ANSWERING;
    }
}
