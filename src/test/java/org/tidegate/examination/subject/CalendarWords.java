package org.tidegate.examination.subject;

import com.ibm.icu.text.DateFormatSymbols;
import com.ibm.icu.text.DisplayContext;
import com.ibm.icu.text.RelativeDateTimeFormatter;
import com.ibm.icu.text.RelativeDateTimeFormatter.AbsoluteUnit;
import com.ibm.icu.text.RelativeDateTimeFormatter.Direction;
import com.ibm.icu.text.SimpleDateFormat;
import com.ibm.icu.util.Calendar;
import com.ibm.icu.util.TimeZone;
import com.ibm.icu.util.ULocale;
import java.util.List;
import java.util.Set;

/** Months, weekdays, day periods and relative days of every language in CLDR, as ICU4J carries it. */
final class CalendarWords {

    /** Shorter abbreviations of the other languages are names of people somewhere: only those that people are likely to write here. */
    private static final Set<String> ABBREVIATING = Set.of(
            "en", "es", "fr", "de", "pl", "pt", "it", "nl", "da", "nb", "no", "sv", "is", "fi", "ro", "tr", "uk", "ru",
            "el", "lt", "lv", "et", "cs", "sk", "hr", "hu", "bg", "id", "fil");

    private static final int SHORTEST_CUT = 4;
    private static final String HEBREW = "he";
    /** Written as one word with what follows: in May. */
    private static final String IN = "ב";

    private record Day(Direction direction, int offset) {}

    /** In this order: some languages have one word for yesterday and tomorrow, and tests lie behind. */
    private static final List<Day> DAYS = List.of(
            new Day(Direction.THIS, 0),
            new Day(Direction.LAST, -1),
            new Day(Direction.NEXT, 1),
            new Day(Direction.LAST_2, -2));

    private final LexiconBuilder lexicon;

    CalendarWords(LexiconBuilder lexicon) {
        this.lexicon = lexicon;
    }

    void addAll() {
        List.of(ULocale.getAvailableLocales()).stream()
                .filter(locale -> locale.getCountry().isEmpty())
                .sorted((a, b) -> {
                    int byUse = Boolean.compare(abbreviating(b), abbreviating(a));
                    return byUse != 0 ? byUse : a.getName().compareTo(b.getName());
                })
                .forEach(this::add);
    }

    private static boolean abbreviating(ULocale locale) {
        return ABBREVIATING.contains(locale.getLanguage());
    }

    private void add(ULocale locale) {
        if (locale.getLanguage().isEmpty()) {
            return;
        }
        DateFormatSymbols symbols = new DateFormatSymbols(locale);
        for (int context : new int[] {DateFormatSymbols.FORMAT, DateFormatSymbols.STANDALONE}) {
            months(symbols.getMonths(context, DateFormatSymbols.WIDE), 1, locale.getLanguage());
            months(symbols.getMonths(context, DateFormatSymbols.ABBREVIATED), 3, locale.getLanguage());
            weekdays(symbols.getWeekdays(context, DateFormatSymbols.WIDE), 2);
            if (abbreviating(locale)) {
                weekdays(symbols.getWeekdays(context, DateFormatSymbols.ABBREVIATED), 2);
                weekdays(symbols.getWeekdays(context, DateFormatSymbols.SHORT), 2);
            }
        }
        if (locale.getLanguage().equals("en")) {
            cutShort(symbols.getWeekdays());
        }
        periods(locale);
        relativeDays(locale);
    }

    /** Tues, Thurs: how English also shortens its weekdays. */
    private void cutShort(String[] weekdays) {
        for (int d = Calendar.SUNDAY; d < weekdays.length; d++) {
            for (int length = SHORTEST_CUT; length < weekdays[d].length() - 1; length++) {
                lexicon.weekday(weekdays[d].substring(0, length), d == Calendar.SUNDAY ? 7 : d - 1);
            }
        }
    }

    private void months(String[] names, int shortest, String language) {
        for (int m = 0; m < names.length && m < 12; m++) {
            if (spoken(names[m], shortest)) {
                lexicon.month(names[m], m + 1);
                if (language.equals(HEBREW)) {
                    lexicon.month(IN + names[m], m + 1);
                }
            }
        }
    }

    private void weekdays(String[] names, int shortest) {
        for (int d = Calendar.SUNDAY; d < names.length; d++) {
            if (spoken(names[d], shortest)) {
                lexicon.weekday(names[d], d == Calendar.SUNDAY ? 7 : d - 1);
            }
        }
    }

    /** Some languages number their months and days: the digits are read elsewhere. */
    private static boolean spoken(String name, int shortest) {
        return name.codePoints().noneMatch(Character::isDigit)
                && name.codePoints().filter(Character::isLetter).count() >= shortest;
    }

    private void periods(ULocale locale) {
        for (String pattern : List.of("B", "a", "BBBB")) {
            SimpleDateFormat format = new SimpleDateFormat(pattern, locale);
            format.setTimeZone(TimeZone.GMT_ZONE);
            for (int hour = 0; hour < 24; hour++) {
                String name = format.format(Long.valueOf(hour * 3_600_000L + 60_000L));
                if (spoken(name, 2)) {
                    lexicon.hours(name, 1 << hour);
                    withoutFunctionWords(name, 1 << hour);
                }
            }
        }
    }

    /** "in the morning" is also written "morning". */
    private void withoutFunctionWords(String name, int mask) {
        int space = name.lastIndexOf(' ');
        if (space > 0 && name.length() - space > 3) {
            lexicon.hours(name.substring(space + 1), mask);
        }
    }

    private void relativeDays(ULocale locale) {
        RelativeDateTimeFormatter format = RelativeDateTimeFormatter.getInstance(
                locale, null, RelativeDateTimeFormatter.Style.LONG, DisplayContext.CAPITALIZATION_NONE);
        for (Day day : DAYS) {
            String word = format.format(day.direction(), AbsoluteUnit.DAY);
            if (word != null && spoken(word, 3)) {
                lexicon.day(word, day.offset());
            }
        }
    }
}
