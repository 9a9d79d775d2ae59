package org.tidegate.examination.subject;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Writes the table of calendar and number words anew from the CLDR data that ICU4J carries. */
final class CldrTableWriter {

    private static final int WORDS_A_ROW = 16;

    private CldrTableWriter() {}

    public static void main(String[] args) throws IOException {
        Files.writeString(Path.of("src/main/resources/subject", CldrTable.RESOURCE), table());
    }

    /** What CLDR knows. */
    static Map<String, Meaning> meanings() {
        LexiconBuilder lexicon = new LexiconBuilder();
        new CalendarWords(lexicon).addAll();
        NumberWords.addAll(lexicon);
        return lexicon.meanings();
    }

    private static String table() {
        Map<String, List<String>> rows = new TreeMap<>();
        new TreeMap<>(meanings())
                .forEach((key, m) -> kinds(m).forEach(kind ->
                        rows.computeIfAbsent(kind, k -> new ArrayList<>()).add(key)));
        StringBuilder out = new StringBuilder(
                "# Words of every language from CLDR, written by CldrTableWriter out of ICU4J; do not edit.\n"
                        + "# Unicode licence v3, https://www.unicode.org/license.txt\n");
        rows.forEach((kind, keys) -> {
            for (int i = 0; i < keys.size(); i += WORDS_A_ROW) {
                List<String> some = keys.subList(i, Math.min(keys.size(), i + WORDS_A_ROW));
                out.append(kind)
                        .append(" = ")
                        .append(String.join(CldrTable.BETWEEN, some))
                        .append('\n');
            }
        });
        return out.toString();
    }

    private static List<String> kinds(Meaning m) {
        List<String> kinds = new ArrayList<>();
        if (m.month() > 0) {
            kinds.add("month " + m.month());
        }
        if (m.weekday() > 0) {
            kinds.add("weekday " + m.weekday());
        }
        if (m.hours() != 0) {
            kinds.add("hours " + m.hours());
        }
        if (m.dayOffset() != null) {
            kinds.add("day " + m.dayOffset());
        }
        if (m.number() >= 0) {
            kinds.add("number " + m.number() + " " + Languages.names(m.languages()));
        }
        return kinds;
    }
}
