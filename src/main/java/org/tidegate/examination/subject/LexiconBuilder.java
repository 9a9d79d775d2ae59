package org.tidegate.examination.subject;

import java.text.Normalizer;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tidegate.rules.WordKind;

/** Gathers the meanings of each phrase; the same word may come from many languages. */
final class LexiconBuilder {

    /** Such a phrase is its own key. */
    private static final Pattern PLAIN = Pattern.compile("[a-z]+( [a-z]+)*");

    private static final class Draft {
        int month;
        int weekday;
        int hours;

        @Nullable
        Integer dayOffset;

        int number = -1;
        long languages;
        final Set<WordKind> kinds = EnumSet.noneOf(WordKind.class);
        Optional<String> clinic = Optional.empty();

        Meaning done() {
            return new Meaning(month, weekday, hours, dayOffset, number, languages, Meaning.mask(kinds), clinic);
        }
    }

    private static final Tokenizer TOKENIZER = new Tokenizer(s -> 0);

    private final Map<String, Draft> drafts;
    private final UnaryOperator<String> keys;
    private final Set<String> spellings = new HashSet<>();

    LexiconBuilder() {
        this(new LinkedHashMap<>(), LexiconBuilder::key);
    }

    private LexiconBuilder(Map<String, Draft> drafts, UnaryOperator<String> keys) {
        this.drafts = drafts;
        this.keys = keys;
    }

    /** Adds to the same lexicon, but takes phrases that are keys already. */
    LexiconBuilder byKey() {
        return new LexiconBuilder(drafts, UnaryOperator.identity());
    }

    LexiconBuilder month(String phrase, int month) {
        Draft d = draft(phrase);
        d.month = d.month == 0 ? month : d.month;
        return this;
    }

    LexiconBuilder weekday(String phrase, int weekday) {
        Draft d = draft(phrase);
        d.weekday = d.weekday == 0 ? weekday : d.weekday;
        return this;
    }

    LexiconBuilder hours(String phrase, int mask) {
        draft(phrase).hours |= mask;
        return this;
    }

    LexiconBuilder day(String phrase, int offset) {
        Draft d = draft(phrase);
        d.dayOffset = d.dayOffset == null ? Integer.valueOf(offset) : d.dayOffset;
        return this;
    }

    /** @param languages bits of {@link Languages} */
    LexiconBuilder number(String phrase, int number, long languages) {
        Draft d = draft(phrase);
        d.number = d.number < 0 ? number : d.number;
        d.languages |= d.number == number ? languages : 0;
        return this;
    }

    LexiconBuilder clinic(String phrase, String code) {
        draft(phrase).clinic = Optional.of(code);
        return this;
    }

    LexiconBuilder kinds(WordKind kind, List<String> phrases) {
        phrases.forEach(p -> {
            draft(p).kinds.add(kind);
            spellings.add(Normalizer.normalize(p.toLowerCase(Locale.ROOT), Normalizer.Form.NFKC));
        });
        return this;
    }

    /** The folded words of a phrase with single spaces, as the lexicon and its users write keys. */
    static String key(String phrase) {
        if (PLAIN.matcher(phrase).matches()) {
            return phrase;
        }
        StringBuilder out = new StringBuilder();
        for (Token t : TOKENIZER.tokens(Cleaner.clean(phrase, 200).text(), 20)) {
            if (t.kind() != Token.Kind.SIGN) {
                out.append(out.isEmpty() ? "" : " ").append(t.key());
            }
        }
        return out.toString();
    }

    private Draft draft(String phrase) {
        return drafts.computeIfAbsent(keys.apply(phrase), k -> new Draft());
    }

    Lexicon done() {
        return Lexicon.of(meanings(), spellings);
    }

    /** By phrase: folded words with single spaces. */
    Map<String, Meaning> meanings() {
        Map<String, Meaning> meanings = new LinkedHashMap<>();
        drafts.forEach((key, draft) -> {
            if (!key.isEmpty()) {
                meanings.put(key, draft.done());
            }
        });
        return meanings;
    }
}
