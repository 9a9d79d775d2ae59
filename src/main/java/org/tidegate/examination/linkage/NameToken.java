package org.tidegate.examination.linkage;

import java.util.Collections;
import java.util.Set;

/** One word of a name. */
final class NameToken {

    private final String written;
    private final Set<String> spellings;

    /** Worked out when first asked for: most words are told apart or found equal by their letters. Any thread finds the same. */
    private volatile Set<String> sounds = Set.of();

    private NameToken(String written, Set<String> spellings) {
        this.written = written;
        this.spellings = spellings;
    }

    static NameToken of(String written) {
        return new NameToken(written, Letters.spellings(written));
    }

    /** As it stood. */
    String written() {
        return written;
    }

    /** In lower-case ASCII letters, the plainest first; empty where it holds no letter. */
    Set<String> spellings() {
        return spellings;
    }

    /** Keys of {@link SoundKey}. */
    Set<String> sounds() {
        if (sounds.isEmpty()) {
            sounds = SoundKey.keys(spellings);
        }
        return sounds;
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
        return !Collections.disjoint(sounds(), other.sounds());
    }
}
