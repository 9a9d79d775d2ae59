package org.tidegate.examination.subject;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What the sender's address line tells about names: a hint for the reading, never a source of it. */
final class Sender {

    private static final int SHORTEST_INSIDE = 4;
    /** More than the 64 octets of RFC 5321 section 4.5.3.1.1. */
    private static final int LONGEST_LOCAL_PART = 100;

    /** In the address of a ship's mailbox, which many share: its words are nobody's name. */
    private static final Set<String> SHIP = Set.of("mv", "vessel", "ship");

    private final List<String> words;
    private final String localPart;
    private final boolean ofShip;

    Sender(StatedText text, Tokenizer tokenizer) {
        words = new ArrayList<>();
        String display = Cleaner.clean(text.fromDisplayName().orElse(""), 200).text();
        tokenizer.tokens(display, 20).stream().filter(Token::isWord).forEach(t -> words.add(t.key()));
        String address = text.fromAddress().orElse("");
        int at = address.indexOf('@');
        int end = Math.min(at < 0 ? address.length() : at, LONGEST_LOCAL_PART);
        localPart = Fold.key(address.substring(0, end));
        List<String> parts = List.of(localPart.split("[^\\p{L}]+"));
        ofShip = parts.stream().anyMatch(SHIP::contains);
        if (ofShip) {
            words.removeAll(parts);
        } else {
            parts.stream().filter(p -> p.length() > 1).forEach(words::add);
        }
    }

    /** The word names a ship whose mailbox this is. */
    boolean namesShip(String key) {
        return ofShip && key.length() >= SHORTEST_INSIDE && localPart.contains(key);
    }

    /** The word is part of the sender's own name, spelled the same or nearly so. */
    boolean names(String key) {
        if (key.length() < 2) {
            return false;
        }
        for (String w : words) {
            if (w.equals(key) || key.length() > 3 && w.length() > 3 && Slips.oneApart(w, key)) {
                return true;
            }
        }
        return !ofShip && key.length() >= SHORTEST_INSIDE && localPart.contains(key);
    }

    /** The address runs the two words together, in either order. */
    boolean joins(String a, String b) {
        return !ofShip && b.length() > 1 && (localPart.contains(a + b) || localPart.contains(b + a));
    }

    /** One of the sender's names begins so. */
    boolean bears(String initial) {
        return !ofShip && localPart.startsWith(initial) || words.stream().anyMatch(w -> w.startsWith(initial));
    }

    /** Mail programs and mass mailers, by the address they use (RFC 2142, RFC 3834). */
    boolean machine() {
        String local = localPart.toLowerCase(Locale.ROOT);
        return local.startsWith("mailer-daemon")
                || local.startsWith("postmaster")
                || local.replace("-", "").replace("_", "").startsWith("noreply")
                || local.startsWith("donotreply")
                || local.startsWith("newsletter")
                || local.startsWith("bounce");
    }
}
