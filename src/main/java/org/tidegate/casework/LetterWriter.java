package org.tidegate.casework;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.tidegate.booking.TestRecord;
import org.tidegate.examination.timing.TimeJudgement.ClockTimes;
import org.tidegate.rules.Letter;
import org.tidegate.rules.LetterTexts;
import org.tidegate.rules.ResultLetter;
import org.tidegate.rules.Rules;
import org.tidegate.rules.Template;
import org.tidegate.work.Enclosed;
import org.tidegate.work.LetterKind;
import org.tidegate.work.Reading;

/** Writes the letters whose words stand wholly in the rules. */
final class LetterWriter {

    private final Rules rules;

    LetterWriter(Rules rules) {
        this.rules = rules;
    }

    /** A letter before it has an address. */
    record Written(String language, String subject, String text, Optional<Enclosed> enclosed) {

        Written(String language, String subject, String text) {
            this(language, subject, text, Optional.empty());
        }

        Written with(Enclosed file) {
            return new Written(language, subject, text, Optional.of(file));
        }
    }

    /**
     * A plain letter in the participant's language.
     *
     * @param until for those that name a time
     * @throws IllegalArgumentException where a value is not known that the text needs
     */
    Written plain(LetterKind kind, Matter matter, Optional<Instant> until) {
        LetterTexts texts = texts(matter);
        Map<String, String> values = LetterValues.of(matter, rules);
        until.ifPresent(t -> values.put("until", LetterValues.clock(t, rules)));
        Letter letter = letter(kind, texts);
        return written(matter, letter.subject(), values, LetterSheet.filled(texts, values, letter.blocks()));
    }

    private static Letter letter(LetterKind kind, LetterTexts texts) {
        return switch (kind) {
            case ACKNOWLEDGEMENT -> texts.acknowledgement();
            case REMINDER -> texts.reminder();
            case EXPIRED -> texts.expired();
            case VOIDED -> texts.voided();
            case REPEAT -> texts.repeat();
            case WITHDRAWN -> texts.withdrawn();
            case TIMES -> texts.times();
            case REQUEST, RESULT, AMENDED, NEW_TIME, ON_CALL, HANDOVER ->
                throw new IllegalArgumentException(kind.code() + " is no plain letter");
        };
    }

    /**
     * The result letter, the result first.
     *
     * @param secondInvalid an invalid one came before, for the attempt before
     * @param original when the letter went out that this one replaces
     */
    Written result(Reading reading, Matter matter, boolean secondInvalid, Optional<Instant> original) {
        LetterTexts texts = texts(matter);
        Map<String, String> values = LetterValues.of(matter, rules);
        original.ifPresent(t -> values.put("original_date", day(t)));
        ResultLetter letter = letter(reading.outcome(), texts);
        List<Template> blocks = new ArrayList<>();
        original.ifPresent(t -> blocks.add(texts.amended()));
        blocks.addAll(
                secondInvalid && letter instanceof ResultLetter.Invalid invalid
                        ? invalid.blocksAfterSecond()
                        : letter.blocks());
        return written(matter, letter.subject(), values, LetterSheet.filled(texts, values, blocks));
    }

    Written withdrawal(Matter matter, Instant original) {
        LetterTexts texts = texts(matter);
        Map<String, String> values = new TreeMap<>(LetterValues.of(matter, rules));
        values.put("original_date", day(original));
        Letter letter = texts.withdrawn();
        return written(matter, letter.subject(), values, LetterSheet.filled(texts, values, letter.blocks()));
    }

    /** To someone whose answer comes later than promised. */
    Written newTime(Matter matter, Instant time, Instant now) {
        LetterTexts texts = texts(matter);
        Map<String, String> values = LetterValues.of(matter, rules);
        boolean today = day(time).equals(day(now));
        String clock = LetterValues.clock(time, rules);
        values.put("new_time", today ? clock : day(time) + " " + clock);
        Letter letter = texts.newTime();
        return written(matter, letter.subject(), values, LetterSheet.filled(texts, values, letter.blocks()));
    }

    /** To someone of whom nothing came, about a test whose clock times are known. */
    Written notHeard(TestRecord test, ClockTimes windows) {
        String asked = test.appointment().language().orElse("");
        LetterTexts texts = rules.texts().forLanguage(asked);
        Map<String, String> values = LetterValues.of(test, windows, rules);
        Letter letter = texts.notHeard();
        return new Written(
                rules.texts().languageFor(asked),
                letter.subject().fill(values),
                LetterSheet.filled(texts, values, letter.blocks()));
    }

    private String day(Instant t) {
        return DateTimeFormatter.ISO_LOCAL_DATE.format(t.atZone(rules.timing().zone()));
    }

    private static ResultLetter letter(Reading.Outcome outcome, LetterTexts texts) {
        return switch (outcome) {
            case NEGATIVE -> texts.negative();
            case POSITIVE -> texts.positive();
            case INVALID -> texts.invalid();
        };
    }

    private LetterTexts texts(Matter matter) {
        return rules.texts().forLanguage(matter.language());
    }

    private Written written(Matter matter, Template subject, Map<String, String> values, String text) {
        return new Written(rules.texts().languageFor(matter.language()), subject.fill(values), text);
    }
}
