package org.tidegate.examination.subject;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** What the sender is called by his own mail program. */
record Sender(Optional<String> displayName, Optional<String> address) {

    /** Folded words of display name and local part. */
    Set<String> words() {
        Set<String> all = new HashSet<>();
        displayName.ifPresent(n -> Tokenizer.tokens(n).stream()
                .filter(Token::word)
                .map(Token::key)
                .filter(k -> k.length() > 1)
                .forEach(all::add));
        address.map(a -> a.substring(0, Math.max(0, a.indexOf('@'))))
                .ifPresent(l -> Tokenizer.tokens(l).stream()
                        .filter(Token::word)
                        .map(Token::key)
                        .filter(k -> k.length() > 2)
                        .forEach(all::add));
        return all;
    }
}
