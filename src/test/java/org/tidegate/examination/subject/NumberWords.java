package org.tidegate.examination.subject;

import com.ibm.icu.text.RuleBasedNumberFormat;
import com.ibm.icu.util.ULocale;

/** Number words from 0 to 59 from the spell-out rules of CLDR: nine, neuf, neun, dziewiąta, девятого. */
final class NumberWords {

    private static final int LAST_MINUTE = 59;

    private static final long HUNGARIAN = Languages.bits("hu");
    /** At that hour: the ending of kilenckor. */
    private static final String AT = "kor";

    private NumberWords() {}

    static void addAll(LexiconBuilder lexicon) {
        for (String language : Languages.ALL) {
            RuleBasedNumberFormat format =
                    new RuleBasedNumberFormat(ULocale.forLanguageTag(language), RuleBasedNumberFormat.SPELLOUT);
            for (String ruleSet : format.getRuleSetNames()) {
                if (!ruleSet.contains("verbose") && !ruleSet.contains("year") && !ruleSet.contains("financial")) {
                    add(lexicon, format, ruleSet, Languages.bits(language));
                }
            }
        }
    }

    private static void add(LexiconBuilder lexicon, RuleBasedNumberFormat format, String ruleSet, long language) {
        for (int n = 0; n <= LAST_MINUTE; n++) {
            String words = format.format(n, ruleSet);
            if (words.codePoints().noneMatch(Character::isDigit)) {
                lexicon.number(words, n, language);
                if (language == HUNGARIAN) {
                    lexicon.number(words + AT, n, language);
                }
            }
        }
    }
}
