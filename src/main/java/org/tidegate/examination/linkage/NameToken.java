package org.tidegate.examination.linkage;

import java.util.Collections;
import java.util.Set;

/**
 * One word of a name.
 *
 * @param written as it stood
 * @param spellings in lower-case ASCII letters, the plainest first, never empty
 * @param sounds keys of {@link SoundKey}
 */
record NameToken(String written, Set<String> spellings, Set<String> sounds) {

    static NameToken of(String written) {
        Set<String> spellings = Letters.spellings(written);
        return new NameToken(written, spellings, SoundKey.keys(spellings));
    }

    String plain() {
        return spellings.iterator().next();
    }

    boolean isInitial() {
        return plain().length() == 1;
    }

    boolean sharesSpelling(NameToken other) {
        return !Collections.disjoint(spellings, other.spellings);
    }

    boolean sharesSound(NameToken other) {
        return !Collections.disjoint(sounds, other.sounds);
    }
}
