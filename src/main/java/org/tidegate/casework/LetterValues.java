package org.tidegate.casework;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.tidegate.booking.TestRecord;
import org.tidegate.examination.timing.TimeJudgement.ClockTimes;
import org.tidegate.finding.Findings;
import org.tidegate.finding.SubjectReading;
import org.tidegate.rules.Rules;

/** Fills the placeholders of letters that are known; times are clock times of the clinic's zone. */
final class LetterValues {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ISO_LOCAL_DATE;

    private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}\\p{Cf}\\p{Zl}\\p{Zp}\\s{}<>]+");
    private static final int LONGEST_NAME = 80;

    private LetterValues() {}

    static Map<String, String> of(Matter matter, Rules rules) {
        Map<String, String> values = new TreeMap<>();
        Deadlines deadlines = matter.deadlines();
        service(values, rules);
        values.put("received", clock(deadlines.arrived(), rules));
        values.put("answer_by", clockOn(deadlines.answerBy(rules), deadlines.arrived(), rules));
        deadlines.windows().ifPresent(w -> windows(w, values, rules));
        values.put("ref", matter.submission().toString());
        statedName(matter.first()).ifPresent(n -> values.put("name", plain(n)));
        matter.test().ifPresent(t -> booked(t, values));
        return values;
    }

    /** For a letter about a test of which no message came. */
    static Map<String, String> of(TestRecord test, ClockTimes windows, Rules rules) {
        Map<String, String> values = new TreeMap<>();
        service(values, rules);
        windows(windows, values, rules);
        booked(test, values);
        return values;
    }

    private static void service(Map<String, String> values, Rules rules) {
        values.put("service", rules.service().name());
        values.put("urgent_number", rules.service().urgentNumber());
        values.put("clinic_phone", rules.service().phone());
    }

    private static void windows(ClockTimes w, Map<String, String> values, Rules rules) {
        values.put("photograph_from", clock(w.from(), rules));
        values.put("photograph_until", clock(w.until(), rules));
        values.put("send_by", clock(w.sendBy(), rules));
    }

    /** One line, as a name is: nothing that a stranger wrote makes paragraphs or fields of its own. */
    static String plain(String value) {
        String line = CONTROL.matcher(value).replaceAll(" ").strip();
        return line.length() <= LONGEST_NAME
                ? line
                : line.substring(0, LONGEST_NAME).strip();
    }

    static String clock(Instant instant, Rules rules) {
        return CLOCK.format(instant.atZone(rules.timing().zone()));
    }

    /** With the date where that is another day. */
    static String clockOn(Instant instant, Instant day, Rules rules) {
        ZoneId zone = rules.timing().zone();
        boolean same =
                instant.atZone(zone).toLocalDate().equals(day.atZone(zone).toLocalDate());
        return same ? clock(instant, rules) : DAY.format(instant.atZone(zone)) + " " + clock(instant, rules);
    }

    private static void booked(TestRecord test, Map<String, String> values) {
        values.put("name", plain(test.appointment().givenName()));
        values.put("ref", test.appointment().ref());
        values.put("clinic", test.appointment().clinic());
        values.put("test_date", DAY.format(test.appointment().slotStart()));
        values.put("kit", test.kit());
        test.lot().ifPresent(lot -> values.put("lot", lot));
        test.mark().ifPresent(mark -> values.put("mark", mark));
    }

    /** As the writer calls himself; else his address. */
    private static Optional<String> statedName(Findings first) {
        return first.readings().stream()
                .map(SubjectReading::name)
                .flatMap(Optional::stream)
                .findFirst()
                .or(() -> first.envelope().from().stream()
                        .map(m -> m.displayName().orElse(m.address()))
                        .findFirst());
    }
}
