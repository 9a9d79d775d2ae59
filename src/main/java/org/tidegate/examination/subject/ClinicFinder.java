package org.tidegate.examination.subject;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.text.similarity.LevenshteinDistance;
import org.tidegate.rules.Clinic;

/** The clinic's name, code or one of its other names, a typing slip in longer words forgiven. */
final class ClinicFinder {

    private record Alias(String code, List<String> words) {}

    private final List<Alias> aliases = new ArrayList<>();

    ClinicFinder(List<Clinic> clinics) {
        for (Clinic clinic : clinics) {
            add(clinic.code(), clinic.code());
            add(clinic.code(), clinic.name());
            clinic.aliases().forEach(a -> add(clinic.code(), a));
        }
        aliases.sort((a, b) -> b.words().size() - a.words().size());
    }

    private void add(String code, String name) {
        List<String> words = Tokenizer.tokens(name).stream()
                .filter(Token::word)
                .map(Token::key)
                .toList();
        if (!words.isEmpty()) {
            aliases.add(new Alias(code, words));
        }
    }

    List<Found<String>> find(List<Token> tokens) {
        List<Found<String>> found = new ArrayList<>();
        for (int i = 0; i < tokens.size(); i++) {
            for (Alias alias : aliases) {
                int end = match(tokens, i, alias);
                if (end > i) {
                    int last = withClinicWord(tokens, end);
                    found.add(new Found<>(alias.code(), i, last, exact(tokens, i, alias) ? 0 : 0.5));
                    break;
                }
            }
        }
        return found;
    }

    private static int withClinicWord(List<Token> tokens, int end) {
        return end < tokens.size()
                        && List.of("clinic", "klinik", "clinica", "clinique")
                                .contains(tokens.get(end).key())
                ? end + 1
                : end;
    }

    private static int match(List<Token> tokens, int from, Alias alias) {
        int at = from;
        for (String word : alias.words()) {
            while (at < tokens.size() && at > from && tokens.get(at).mark(".")) {
                at++;
            }
            if (at >= tokens.size()
                    || !tokens.get(at).word()
                    || !near(tokens.get(at).key(), word)) {
                return -1;
            }
            at++;
        }
        return at;
    }

    private static boolean exact(List<Token> tokens, int from, Alias alias) {
        return tokens.get(from).key().equals(alias.words().get(0));
    }

    private static boolean near(String written, String word) {
        if (written.equals(word)) {
            return true;
        }
        boolean longEnough = word.length() >= 4 && written.length() >= 4 && written.charAt(0) == word.charAt(0);
        return longEnough
                && LevenshteinDistance.getDefaultInstance().apply(written, word) <= (word.length() >= 7 ? 2 : 1)
                && Math.abs(written.length() - word.length()) <= 1;
    }
}
