package org.tidegate.examination.subject;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.tidegate.rules.SubjectRules;

/** Words of a line that are no name, time or place. */
final class LineWords {

    private static final List<String> NOTICES = List.of(
            "undeliverable",
            "undelivered",
            "delivery status",
            "delivery failure",
            "mail delivery",
            "returned mail",
            "automatic reply",
            "out of office",
            "auto reply",
            "autoreply",
            "failure notice",
            "не удалась",
            "unzustellbar",
            "abwesenheit",
            "absence",
            "respuesta automatica",
            "reponse automatique",
            "invoice",
            "factura",
            "rechnung",
            "newsletter");

    private final Set<String> prefixes = new HashSet<>();
    private final Set<String> results = new HashSet<>();

    LineWords(SubjectRules rules) {
        rules.prefixes().forEach(p -> prefixes.add(Folding.fold(p)));
        rules.resultWords().forEach(r -> results.add(Folding.fold(r)));
    }

    /** Strips reply and forward prefixes, however many. */
    String withoutPrefixes(String line) {
        String rest = line.strip();
        for (int colon = rest.indexOf(':'); colon > 0 && colon < 14; colon = rest.indexOf(':')) {
            String head = Folding.fold(rest.substring(0, colon)).strip().replaceAll("\\[?\\d*\\]?$", "");
            if (!prefixes.contains(head)) {
                break;
            }
            rest = rest.substring(colon + 1).strip();
        }
        return rest;
    }

    boolean isNotice(String line) {
        String folded = Folding.fold(line);
        return NOTICES.stream().anyMatch(folded::contains);
    }

    Optional<String> claim(List<Token> tokens) {
        return tokens.stream()
                .filter(t -> results.contains(t.key()))
                .map(Token::text)
                .findFirst();
    }

    /** Letters, a hyphen and digits run together: how appointment references look. */
    Optional<String> reference(List<Token> tokens, boolean[] used) {
        for (int i = 0; i + 2 < tokens.size(); i++) {
            boolean shape = tokens.get(i).word()
                    && tokens.get(i).text().length() <= 3
                    && tokens.get(i + 1).mark("-")
                    && tokens.get(i + 1).glued()
                    && tokens.get(i + 2).glued()
                    && !tokens.get(i + 2).mark("-");
            if (shape && !used[i] && !used[i + 2]) {
                StringBuilder text = new StringBuilder(tokens.get(i).text().toUpperCase(Locale.ROOT)).append('-');
                int at = i + 2;
                boolean digits = false;
                while (at < tokens.size()
                        && tokens.get(at).glued()
                        && tokens.get(at).kind() != Token.Kind.MARK) {
                    digits |= tokens.get(at).number();
                    text.append(tokens.get(at++).text().toUpperCase(Locale.ROOT));
                }
                if (digits && text.length() >= 6) {
                    return Optional.of(text.toString());
                }
            }
        }
        return Optional.empty();
    }
}
