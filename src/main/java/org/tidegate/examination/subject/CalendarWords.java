package org.tidegate.examination.subject;

import com.ibm.icu.text.DateFormatSymbols;
import com.ibm.icu.util.Calendar;
import com.ibm.icu.util.ULocale;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Month, weekday and half-of-day words of every locale, from CLDR through ICU4J. */
final class CalendarWords {

    private static final int[] CONTEXTS = {DateFormatSymbols.FORMAT, DateFormatSymbols.STANDALONE};
    private static final int[] WIDTHS = {DateFormatSymbols.WIDE, DateFormatSymbols.ABBREVIATED};

    private static final Map<String, Integer> MONTHS = new HashMap<>();
    private static final Map<String, Integer> WEEKDAYS = new HashMap<>();
    private static final Map<String, Boolean> HALVES = new HashMap<>();

    static {
        for (ULocale locale : ULocale.getAvailableLocales()) {
            if (locale.getCountry().isEmpty()) {
                DateFormatSymbols symbols = new DateFormatSymbols(locale);
                for (int context : CONTEXTS) {
                    for (int width : WIDTHS) {
                        put(MONTHS, symbols.getMonths(context, width), 1);
                        put(WEEKDAYS, symbols.getWeekdays(context, width), 0);
                    }
                }
                String[] halves = symbols.getAmPmStrings();
                putHalf(halves[Calendar.AM], false);
                putHalf(halves[Calendar.PM], true);
            }
        }
        putHalf("am", false);
        putHalf("pm", true);
    }

    private CalendarWords() {}

    private static void put(Map<String, Integer> into, String[] words, int first) {
        for (int i = 0; i < words.length; i++) {
            String key = key(words[i]);
            if (key.length() > 1 && !key.chars().allMatch(Character::isDigit) && !key.matches("m?\\d+.*")) {
                into.putIfAbsent(key, i + first);
            }
        }
    }

    private static void putHalf(String word, boolean afternoon) {
        String key = key(word);
        if (!key.isEmpty()) {
            HALVES.putIfAbsent(key, afternoon);
        }
    }

    private static String key(String word) {
        return Folding.fold(word).replace(".", "").strip();
    }

    /** 1 for January. */
    static Optional<Integer> month(String key) {
        return Optional.ofNullable(MONTHS.get(key));
    }

    static boolean isWeekday(String key) {
        return WEEKDAYS.containsKey(key);
    }

    /** True for the half from noon on. */
    static Optional<Boolean> afternoon(String key) {
        return Optional.ofNullable(HALVES.get(key));
    }
}
