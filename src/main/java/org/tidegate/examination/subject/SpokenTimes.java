package org.tidegate.examination.subject;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidegate.rules.WordKind;

/** Times in words: half nine, ten to six, a las nueve y media, wpół do dziesiątej; noon and midnight. */
final class SpokenTimes implements Finder {

    private static final int LAST_HOUR = 24;

    private final Map<String, List<SpokenPattern>> byFirstWord = new HashMap<>();
    /** Patterns that begin with a number, by the word behind it; under "" those with another number there. */
    private final Map<String, List<SpokenPattern>> bySecondWord = new HashMap<>();

    /** Patterns of one word: полдесятого, halbneun, οκτώμισι. */
    private final List<SpokenPattern> compounds = new ArrayList<>();

    SpokenTimes() {
        long languages = 0;
        for (Resources.Row row : Resources.rows("spoken-times.txt")) {
            if (row.key().equals("language")) {
                languages = row.value().equals("any") ? 0 : Languages.bits(row.value());
                continue;
            }
            SpokenPattern pattern = SpokenPattern.of(row.key(), row.value(), languages);
            String first = pattern.elements().get(0);
            if (pattern.compound()) {
                compounds.add(pattern);
            } else if (pattern.startsWithSlot()) {
                String second = pattern.elements().get(1);
                put(bySecondWord, second.startsWith("{") ? "" : second, pattern);
            } else {
                put(byFirstWord, first, pattern);
            }
        }
    }

    private static void put(Map<String, List<SpokenPattern>> patterns, String word, SpokenPattern pattern) {
        patterns.computeIfAbsent(word, k -> new ArrayList<>()).add(pattern);
    }

    @Override
    public void find(Line line, int at, Candidates out) {
        fixed(line, at, out);
        if (line.isWord(at)) {
            run(line, at, byFirstWord.get(line.token(at).key()), out);
            compound(line, at, out);
        }
        if (line.isNumber(at)) {
            numberFirst(line, at, 1, out);
        }
        BareHours.find(line, at, out);
        int longest = 0;
        for (Lexicon.Match m : line.matches(at)) {
            boolean number = m.meaning().number() >= 0 || Run.named(m.meaning()) > 0;
            if (number && m.length() > longest) {
                longest = m.length();
                numberFirst(line, at, longest, out);
            }
        }
    }

    /** Patterns that fit the word behind a number of that many tokens. */
    private void numberFirst(Line line, int at, int length, Candidates out) {
        int next = line.isSign(at + length, "-.") ? at + length + 1 : at + length;
        if (line.isWord(next)) {
            run(line, at, bySecondWord.get(line.token(next).key()), out);
            run(line, at, bySecondWord.get(""), out);
        }
    }

    private static void run(Line line, int at, @Nullable List<SpokenPattern> patterns, Candidates out) {
        if (patterns != null) {
            for (SpokenPattern p : patterns) {
                new Run(line, p, out).match(0, at, at, new Said(-1, 0, 0));
            }
        }
    }

    private void compound(Line line, int at, Candidates out) {
        for (SpokenPattern p : compounds) {
            p.hourIn(line.token(at).key())
                    .map(line::known)
                    .filter(p::takes)
                    .ifPresent(m -> new Run(line, p, out).emit(at, at + 1, new Said(m.number(), 0, 0)));
        }
    }

    private static void fixed(Line line, int at, Candidates out) {
        int noon = line.length(at, WordKind.NOON);
        int midnight = line.length(at, WordKind.MIDNIGHT);
        if (noon > 0) {
            out.add(new Candidate(Candidate.Field.TIME, at, at + noon, 1.2, ClockTime.of(12 * 60, true)));
        }
        if (midnight > 0) {
            out.add(new Candidate(Candidate.Field.TIME, at, at + midnight, 1.2, ClockTime.of(0, true)));
        }
    }

    /**
     * What filled the slots so far.
     *
     * @param digits slots that digits filled
     */
    private record Said(int hour, int minute, int digits) {

        Said with(boolean isHour, int value, boolean digit) {
            return new Said(isHour ? value : hour, isHour ? minute : value, digits + (digit ? 1 : 0));
        }
    }

    private record Run(Line line, SpokenPattern pattern, Candidates out) {

        void match(int element, int at, int start, Said said) {
            if (element == pattern.elements().size()) {
                emit(start, at, said);
                return;
            }
            int i = element > 0 && line.isSign(at, "-.") && line.has(at + 1) ? at + 1 : at;
            if (!line.has(i)) {
                return;
            }
            String wanted = pattern.elements().get(element);
            if (wanted.startsWith("{")) {
                slot(element, i, start, said, wanted);
            } else if (line.isWord(i) && line.token(i).key().equals(wanted)) {
                match(element + 1, i + 1, start, said);
            }
        }

        private void slot(int element, int i, int start, Said said, String slot) {
            boolean hour = slot.equalsIgnoreCase("{h}");
            boolean wordsOnly = Character.isUpperCase(slot.charAt(1));
            if (line.isNumber(i) && !wordsOnly && line.token(i).digits() <= 2) {
                match(element + 1, i + 1, start, said.with(hour, line.token(i).number(), true));
            }
            for (Lexicon.Match m : line.matches(i)) {
                if (pattern.takes(m.meaning())) {
                    match(
                            element + 1,
                            i + m.length(),
                            start,
                            said.with(hour, m.meaning().number(), false));
                } else if (hour && pattern.elements().size() > 2 && named(m.meaning()) > 0) {
                    match(element + 1, i + m.length(), start, said.with(true, named(m.meaning()), false));
                }
            }
        }

        /** Noon and midnight as hours: ten to midnight. */
        private static int named(Meaning m) {
            return m.is(WordKind.NOON) ? 12 : m.is(WordKind.MIDNIGHT) ? LAST_HOUR : 0;
        }

        private void emit(int from, int to, Said said) {
            boolean valid = said.hour() <= LAST_HOUR && said.minute() <= 59 && (said.hour() >= 0 || !pattern.hasHour());
            boolean bareDigits = said.digits() > 0 && pattern.minutes() == 0 && pattern.spoken() == 0;
            if (!valid
                    || bareDigits
                            && pattern.elements().size() == 2
                            && pattern.elements().get(0).length() < 2) {
                return;
            }
            int minutes = pattern.time(Math.max(0, said.hour()), said.minute());
            boolean known = said.hour() > 12 || said.hour() < 0 || minutes >= 13 * 60;
            double cost =
                    0.4 + 0.4 * said.digits() + (pattern.elements().size() < 3 ? 0.3 : 0) + (pattern.rough() ? 1.5 : 0);
            out.add(new Candidate(
                    Candidate.Field.TIME, from, to, cost - 0.25 * (to - from), ClockTime.of(minutes, known)));
            if (pattern.rough()) {
                out.add(Candidate.skip(from, to, 0.3));
            }
        }
    }
}
