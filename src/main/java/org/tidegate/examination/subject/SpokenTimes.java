package org.tidegate.examination.subject;

import com.ibm.icu.text.RuleBasedNumberFormat;
import com.ibm.icu.util.ULocale;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidegate.examination.subject.TimeFinder.Clock;

/** Clock times in words: {@code half nine}, {@code ten to six}, {@code half past 10}, {@code las nueve y media}. Number words from CLDR. */
final class SpokenTimes {

    private static final List<String> LANGUAGES =
            List.of("en", "es", "fr", "de", "pt", "it", "nl", "sv", "nb", "da", "pl");
    private static final Map<String, Integer> NUMBERS = new HashMap<>();
    private static final Map<String, Integer> PARTS = Map.ofEntries(
            Map.entry("half", 30),
            Map.entry("quarter", 15),
            Map.entry("media", 30),
            Map.entry("cuarto", 15),
            Map.entry("demie", 30),
            Map.entry("quart", 15),
            Map.entry("meia", 30),
            Map.entry("mezza", 30),
            Map.entry("mezzo", 30),
            Map.entry("viertel", 15),
            Map.entry("kwart", 15),
            Map.entry("kvart", 15));
    private static final List<String> AFTER = List.of("past", "after", "nach", "over", "y", "et", "e");
    private static final List<String> BEFORE = List.of("to", "till", "vor", "voor", "menos", "moins", "meno");
    /** Languages in which {@code half nine} is 8:30 have words of their own for half. */
    private static final List<String> HALF_BEFORE = List.of("halb", "halv", "half_nl");

    static {
        for (String language : LANGUAGES) {
            RuleBasedNumberFormat spell =
                    new RuleBasedNumberFormat(new ULocale(language), RuleBasedNumberFormat.SPELLOUT);
            for (int n = 1; n <= 29; n++) {
                String word = Folding.fold(spell.format(n)).replace("\u00ad", "");
                if (!word.contains(" ")) {
                    NUMBERS.putIfAbsent(word, n);
                }
            }
        }
        NUMBERS.put("una", 1);
        NUMBERS.put("noon", 12);
    }

    private final List<Token> tokens;

    SpokenTimes(List<Token> tokens) {
        this.tokens = tokens;
    }

    List<Found<Clock>> find() {
        List<Found<Clock>> found = new ArrayList<>();
        for (int i = 0; i < tokens.size(); i++) {
            partFirst(i).ifPresent(found::add);
            hourFirst(i).ifPresent(found::add);
        }
        return found;
    }

    /** {@code ten to six}, {@code half past 10}, {@code half nine}, {@code halb neun}. */
    private Optional<Found<Clock>> partFirst(int i) {
        Optional<Integer> minutes = part(i);
        boolean earlier = HALF_BEFORE.contains(tokens.get(i).key());
        if (earlier && hour(i + 1).isPresent()) {
            return clock(hour(i + 1).get() - 1, 30, i, i + 2);
        }
        if (minutes.isEmpty() || i + 1 >= tokens.size()) {
            return Optional.empty();
        }
        String joint = tokens.get(i + 1).key();
        if (AFTER.subList(0, 4).contains(joint) && hour(i + 2).isPresent()) {
            return clock(hour(i + 2).get(), minutes.get(), i, i + 3);
        }
        if (BEFORE.subList(0, 4).contains(joint) && hour(i + 2).isPresent()) {
            return clock(hour(i + 2).get() - 1, 60 - minutes.get(), i, i + 3);
        }
        boolean bareHalf = tokens.get(i).key().equals("half") && hour(i + 1).isPresent();
        return bareHalf ? clock(hour(i + 1).get(), 30, i, i + 2) : Optional.empty();
    }

    /** {@code nueve y media}, {@code neuf heures et quart}, {@code diez menos cuarto}. */
    private Optional<Found<Clock>> hourFirst(int i) {
        Optional<Integer> hour = hour(i);
        int at = i + 1 < tokens.size() && tokens.get(i + 1).key().startsWith("heure") ? i + 2 : i + 1;
        if (hour.isEmpty() || at + 1 >= tokens.size()) {
            return Optional.empty();
        }
        String joint = tokens.get(at).key();
        int value = tokens.get(at + 1).key().equals("le") && at + 2 < tokens.size() ? at + 2 : at + 1;
        Optional<Integer> minutes = part(value);
        if (minutes.isEmpty()) {
            return Optional.empty();
        }
        if (AFTER.subList(4, 7).contains(joint)) {
            return clock(hour.get(), minutes.get(), i, value + 1);
        }
        return BEFORE.subList(4, 7).contains(joint)
                ? clock(hour.get() - 1, 60 - minutes.get(), i, value + 1)
                : Optional.empty();
    }

    private Optional<Integer> part(int i) {
        if (i >= tokens.size()) {
            return Optional.empty();
        }
        String key = tokens.get(i).key();
        return Optional.ofNullable(PARTS.get(key)).or(() -> number(i)).filter(n -> n > 0 && n < 60);
    }

    private Optional<Integer> hour(int i) {
        return number(i).filter(n -> n >= 1 && n <= 24);
    }

    private Optional<Integer> number(int i) {
        if (i >= tokens.size()) {
            return Optional.empty();
        }
        Token t = tokens.get(i);
        boolean digits = t.number()
                && t.text().length() <= 2
                && !(i + 1 < tokens.size() && tokens.get(i + 1).mark(":."));
        return digits ? Optional.of(Integer.parseInt(t.text())) : Optional.ofNullable(NUMBERS.get(t.key()));
    }

    private static Optional<Found<Clock>> clock(int hour, int minute, int from, int to) {
        int h = minute == 60 ? hour + 1 : hour;
        return Optional.of(new Found<>(
                new Clock(LocalTime.of(Math.floorMod(h, 24), minute % 60), false), from, to, 0.2));
    }
}
