package org.tidegate.examination.picture;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.tidegate.finding.PictureFinding.Fingerprints;
import org.tidegate.render.SharedTable;

/**
 * How many copies are found again, and how many pairs of different people's pictures on one table with one cassette type are taken for the same:
 * {@code DuplicatesMeasure [people] [table] [first person]}, 460 unless said, whose pairs are over 100,000. Table 20260504 and its first people, and
 * tables 11 to 14, served for tuning. {@code DuplicatesMeasure cassettes [people]} compares the cassettes alone, cut out and laid straight: the same
 * one beside another card against another one.
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
            cassettes(arguments.length > 1 ? Integer.parseInt(arguments[1]) : 60);
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

    private static void cassettes(int people) {
        List<long[]> first = new ArrayList<>();
        List<long[]> second = new ArrayList<>();
        for (int person = 0; person < people; person++) {
            Optional<long[]> a = cassette(SharedTable.photo(TUNING_TABLE, person, person, 0));
            Optional<long[]> b = cassette(SharedTable.photo(TUNING_TABLE, person, person + 1, 1));
            if (a.isPresent() && b.isPresent()) {
                first.add(a.get());
                second.add(b.get());
            }
        }
        List<Integer> same = new ArrayList<>();
        List<Integer> other = new ArrayList<>();
        for (int i = 0; i < first.size(); i++) {
            for (int j = 0; j < second.size(); j++) {
                (i == j ? same : other).add(HashWords.fine(first.get(i), second.get(j), 0));
            }
        }
        print("the same cassette", same);
        print("another cassette", other);
    }

    private static Optional<long[]> cassette(BufferedImage photo) {
        return CassetteFinder.find(
                        photo, LiveRules.read().protocols(), LiveRules.read().pictures())
                .stream()
                .findFirst()
                .map(c -> new Quad(
                        c.box().get(0), c.box().get(1), c.box().get(2), c.box().get(3)))
                .map(q -> Homography.toQuad(q).rectify(Pixels.of(photo), 420, 126))
                .flatMap(p ->
                        FINGERPRINTER.of(new byte[0], Optional.of(image(p))).whole())
                .map(HashWords::of);
    }

    private static BufferedImage image(Pixels pixels) {
        BufferedImage image = new BufferedImage(pixels.width(), pixels.height(), BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, pixels.width(), pixels.height(), pixels.rgb(), 0, pixels.width());
        return image;
    }

    private static void print(String what, List<Integer> distances) {
        int[] sorted = distances.stream().mapToInt(Integer::intValue).toArray();
        Arrays.sort(sorted);
        System.out.printf(
                Locale.ROOT,
                "%s, %d pairs: distance least %d, 1 %% %d, median %d, 99 %% %d, most %d%n",
                what,
                sorted.length,
                sorted[0],
                sorted[sorted.length / 100],
                sorted[sorted.length / 2],
                sorted[sorted.length * 99 / 100],
                sorted[sorted.length - 1]);
    }
}
