package org.tidegate.examination.picture;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.BiPredicate;
import java.util.stream.LongStream;
import org.tidegate.finding.PictureFinding.CassetteFinding;
import org.tidegate.otherhand.OtherHand;
import org.tidegate.render.TestScene;
import org.tidegate.rules.Rules;
import org.tidegate.thirdhand.ThirdHand;

/**
 * Fits the weights of {@link CassetteSigns} and {@link CardSigns} anew to drawn pictures: {@code … FinderFit [own] [other] [third]} pictures of each painter,
 * 120, 250 and 100 unless said, the own ones from the tuning ranges. Of a picture only what it shows is known, not where: the likeliest outlines that lie
 * apart are taken for it, the rest for something else, and the weights are fitted again (multiple-instance learning).
 */
public final class FinderFit {

    private static final int ROUNDS = 6;
    private static final double RIDGE = 2;

    /** Outlines of other things that are learnt from in each picture: those taken for it most. */
    private static final int MISTAKABLE = 8;

    private static final long OWN_SEED = 5_100_000;

    /**
     * One picture.
     *
     * @param terms of each outline
     * @param apart which of them do not lie in one place
     * @param shown how many of them are what is looked for
     */
    private record Bag(List<double[]> terms, BiPredicate<Integer, Integer> apart, int shown) {

        /** The likeliest first, each apart from those before it. */
        List<Integer> likeliest(double[] weights) {
            List<Integer> order = new ArrayList<>();
            for (int i = 0; i < terms.size(); i++) {
                order.add(i);
            }
            order.sort(Comparator.comparingDouble(i -> -Logistic.probability(weights, terms.get(i))));
            List<Integer> kept = new ArrayList<>();
            for (int i : order) {
                if (kept.stream().allMatch(k -> apart.test(k, i))) {
                    kept.add(i);
                }
            }
            return kept;
        }
    }

    private final Rules rules = Rules.bundled();
    private final List<Bag> cassettes = Collections.synchronizedList(new ArrayList<>());
    private final List<Bag> documents = Collections.synchronizedList(new ArrayList<>());

    private FinderFit() {}

    public static void main(String[] arguments) {
        int own = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 120;
        int other = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 250;
        int third = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 100;
        FinderFit fit = new FinderFit();
        LongStream.range(OWN_SEED, OWN_SEED + own).parallel().forEach(seed -> {
            TestScene scene = TestScene.draw(seed, false, seed % 4 == 0);
            fit.add(scene.image(), scene.cassettes(), scene.document());
        });
        LongStream.rangeClosed(1, other).parallel().forEach(seed -> {
            OtherHand.Picture picture = OtherHand.picture(seed);
            fit.add(
                    picture.image(),
                    picture.truth().cassettes(),
                    picture.truth().document());
        });
        LongStream.rangeClosed(1, third).parallel().forEach(seed -> {
            ThirdHand.Picture picture = ThirdHand.picture(seed);
            fit.add(
                    picture.image(),
                    picture.truth().cassettes(),
                    picture.truth().document());
        });
        print("CassetteSigns", fit.cassettes, CassetteSigns.WEIGHTS);
        print("CardSigns", fit.documents, CardSigns.WEIGHTS);
    }

    private void add(BufferedImage picture, int shown, boolean document) {
        Pixels image = Pixels.of(FinePicture.of(picture).working());
        List<QuadSearch.Found> quads = QuadSearch.in(image);
        List<CassetteCandidate> found = CassetteFinder.candidates(image, quads, rules.protocols(), rules.pictures());
        cassettes.add(new Bag(
                found.stream().map(c -> c.signs().terms()).toList(),
                (i, j) -> !found.get(i).covers(found.get(j).body().outline()),
                shown));
        List<CassetteFinding> known = CassetteFinder.chosen(found, rules.pictures());
        CardSigns.View view = DocumentFinder.view(image);
        List<double[]> cards = DocumentFinder.cards(quads, known, view).stream()
                .map(c -> CardSigns.outline(c, view).seen(c, view).read(c, view).terms())
                .toList();
        documents.add(new Bag(cards, (i, j) -> !document, document ? 1 : 0));
    }

    private static void print(String what, List<Bag> bags, double[] before) {
        double[] weights = before;
        for (int round = 0; round < ROUNDS; round++) {
            weights = LogisticFit.of(samples(bags, weights), RIDGE);
        }
        double[] fitted = weights;
        long right = bags.stream().filter(b -> count(b, fitted) == b.shown).count();
        long rightBefore =
                bags.stream().filter(b -> count(b, before) == b.shown).count();
        System.out.printf(
                Locale.ROOT,
                "%s: right in %d of %d pictures, %d before; %s%n",
                what,
                right,
                bags.size(),
                rightBefore,
                Arrays.toString(
                        Arrays.stream(fitted).map(w -> Math.rint(w * 100) / 100).toArray()));
    }

    private static List<LogisticFit.Sample> samples(List<Bag> bags, double[] weights) {
        List<LogisticFit.Sample> samples = new ArrayList<>();
        for (Bag bag : bags) {
            List<Integer> likeliest = bag.likeliest(weights);
            for (int i = 0; i < Math.min(likeliest.size(), bag.shown + MISTAKABLE); i++) {
                samples.add(new LogisticFit.Sample(bag.terms.get(likeliest.get(i)), i < bag.shown, 1));
            }
        }
        return samples;
    }

    private static long count(Bag bag, double[] weights) {
        return bag.likeliest(weights).stream()
                .filter(i -> Logistic.probability(weights, bag.terms.get(i)) >= 0.5)
                .count();
    }
}
