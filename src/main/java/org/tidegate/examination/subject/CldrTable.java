package org.tidegate.examination.subject;

/**
 * Months, weekdays, day periods, relative days and number words of every language, from a table that ICU4J's CLDR data was written
 * to beforehand: asking ICU4J for eight hundred locales takes seconds. A test holds the table and ICU4J together.
 */
final class CldrTable {

    static final String RESOURCE = "cldr-words.txt";
    static final String BETWEEN = "|";
    /** What people say besides. */
    private static final String EVERYDAY = "everyday-words.txt";

    private CldrTable() {}

    static void addTo(LexiconBuilder words) {
        add(RESOURCE, words);
    }

    static void addEverydayTo(LexiconBuilder words) {
        add(EVERYDAY, words);
    }

    private static void add(String resource, LexiconBuilder words) {
        LexiconBuilder lexicon = words.byKey();
        for (Resources.Row row : Resources.rows(resource)) {
            String[] kind = row.key().split(" ", 3);
            int value = Integer.parseInt(kind[1]);
            long languages = kind.length > 2 ? Languages.bits(kind[2]) : 0;
            for (String key : row.value().split("\\|")) {
                add(lexicon, kind[0], value, languages, key);
            }
        }
    }

    private static void add(LexiconBuilder lexicon, String kind, int value, long languages, String key) {
        switch (kind) {
            case "month" -> lexicon.month(key, value);
            case "weekday" -> lexicon.weekday(key, value);
            case "hours" -> lexicon.hours(key, value);
            case "day" -> lexicon.day(key, value);
            case "number" -> lexicon.number(key, value, languages);
            default -> throw new IllegalStateException(RESOURCE + " has a row of unknown kind " + kind);
        }
    }
}
