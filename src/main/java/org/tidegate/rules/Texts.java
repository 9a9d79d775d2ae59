package org.tidegate.rules;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The texts of all languages.
 *
 * @param byLanguage by BCP 47 tag in the order of {@code service.yaml}; the first serves where a participant's language has none
 */
public record Texts(Map<String, LetterTexts> byLanguage) {

    /** The texts for a tag such as {@code pl} or {@code pl-PL}; the first language where there are none. */
    public LetterTexts forLanguage(String tag) {
        return Optional.ofNullable(byLanguage.get(languageFor(tag)))
                .orElseThrow(() -> new IllegalStateException("no texts at all"));
    }

    /** The tag of the texts that {@link #forLanguage} gives. */
    public String languageFor(String tag) {
        List<String> known = List.copyOf(byLanguage.keySet());
        String primary = tag.strip().split("[-_]", 2)[0];
        return known.stream()
                .filter(k -> k.equalsIgnoreCase(tag.strip()) || k.equalsIgnoreCase(primary))
                .findFirst()
                .orElseGet(() -> known.get(0));
    }
}
