package org.tidegate.casework;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.tidegate.rules.LetterTexts;
import org.tidegate.rules.Template;

/** The frame of every letter: greeting above; urgent help, the clinic's phone, the caution and the signature below. */
final class LetterSheet {

    private LetterSheet() {}

    /** @throws IllegalArgumentException where a value is missing: no letter goes out with a hole in it */
    static String text(LetterTexts texts, Map<String, String> values, List<String> paragraphs) {
        List<String> all = new ArrayList<>();
        all.add(texts.greeting().fill(values));
        all.addAll(paragraphs);
        all.addAll(frame(texts, values));
        all.add(texts.signature().fill(values));
        return String.join("\n\n", all) + "\n";
    }

    static String filled(LetterTexts texts, Map<String, String> values, List<Template> paragraphs) {
        return text(texts, values, paragraphs.stream().map(p -> p.fill(values)).toList());
    }

    /** What no letter may leave out, whoever wrote it. */
    static List<String> frame(LetterTexts texts, Map<String, String> values) {
        return Stream.of(texts.urgentHelp(), texts.questions(), texts.caution())
                .map(t -> t.fill(values))
                .toList();
    }
}
