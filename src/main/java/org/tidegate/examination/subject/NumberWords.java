package org.tidegate.examination.subject;

import com.ibm.icu.text.RuleBasedNumberFormat;
import com.ibm.icu.util.ULocale;
import java.util.List;

/** Number words from 0 to 59 from the spell-out rules of CLDR: nine, neuf, neun, dziewiąta, девятого. */
final class NumberWords {

    private static final List<String> LANGUAGES = List.of(
            "en", "es", "fr", "de", "pl", "pt", "it", "nl", "da", "nb", "sv", "is", "fi", "ro", "tr", "uk", "ru", "el",
            "lt", "lv", "et", "cs", "sk", "hr", "hu", "bg", "id", "fil", "vi", "zh", "ja", "ko", "ca", "ar");
    private static final int LAST_MINUTE = 59;

    private NumberWords() {}

    static void addAll(LexiconBuilder lexicon) {
        for (String language : LANGUAGES) {
            RuleBasedNumberFormat format =
                    new RuleBasedNumberFormat(ULocale.forLanguageTag(language), RuleBasedNumberFormat.SPELLOUT);
            for (String ruleSet : format.getRuleSetNames()) {
                if (!ruleSet.contains("verbose") && !ruleSet.contains("year") && !ruleSet.contains("financial")) {
                    add(lexicon, format, ruleSet);
                }
            }
        }
    }

    private static void add(LexiconBuilder lexicon, RuleBasedNumberFormat format, String ruleSet) {
        for (int n = 0; n <= LAST_MINUTE; n++) {
            String words = format.format(n, ruleSet);
            if (words.codePoints().noneMatch(Character::isDigit)) {
                lexicon.number(words, n);
            }
        }
    }
}
