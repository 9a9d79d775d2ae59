package org.tidegate.examination.picture;

import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.tidegate.finding.PictureFinding.Fingerprints;
import org.tidegate.render.SharedTable;

/**
 * How many copies are found again, and how many pairs of different people's pictures on one table with one cassette type are taken for the same:
 * {@code DuplicatesMeasure [people] [table] [first person]}, 460 unless said, whose pairs are over 100,000. Table 20260504 and its first people, and
 * tables 11 to 14, served for tuning. {@code DuplicatesMeasure cassettes [cassettes] [first cassette]} is {@link WritingMeasure}.
 */
public final class DuplicatesMeasure {

    private static final long TUNING_TABLE = 20260504;
    private static final Fingerprinter FINGERPRINTER = new Fingerprinter(new byte[16]);

    private final SeenBefore seen = new SeenBefore(LiveRules.read().pictures().sameWithin());
    private final Map<String, Integer> again = new LinkedHashMap<>();
    private int files;
    private int falseAlarms;

    private DuplicatesMeasure() {}

    public static void main(String[] arguments) {
        if (arguments.length > 0 && arguments[0].equals("cassettes")) {
            WritingMeasure.main(Arrays.copyOfRange(arguments, 1, arguments.length));
            return;
        }
        int people = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 460;
        long table = arguments.length > 1 ? Long.parseLong(arguments[1]) : TUNING_TABLE;
        int first = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 0;
        DuplicatesMeasure measure = new DuplicatesMeasure();
        for (int person = 0; person < people; person++) {
            measure.add(person, SharedTable.photo(table, first + person, first + person, 0));
            if ((person + 1) % 20 == 0 || person + 1 == people) {
                System.out.printf(
                        "%d people, %d pairs: false alarms %d; copies found %s%n",
                        person + 1, (person + 1) * person / 2, measure.falseAlarms, measure.again);
            }
        }
    }

    /** Copies are looked up before the next person comes, so every pair is met once. */
    private void add(int person, BufferedImage photo) {
        Fingerprints print = print(photo);
        falseAlarms += seen.find(print).size();
        seen.add(person, print);
        for (Map.Entry<String, UnaryOperator<BufferedImage>> copy : Copies.ALL.entrySet()) {
            boolean found =
                    seen.find(print(copy.getValue().apply(photo))).stream().anyMatch(s -> s.owner() == person);
            again.merge(copy.getKey(), found ? 1 : 0, Integer::sum);
        }
    }

    private Fingerprints print(BufferedImage image) {
        files++;
        return FINGERPRINTER.of(
                new byte[] {(byte) files, (byte) (files >> 8), (byte) (files >> 16)}, Optional.of(image));
    }
}
