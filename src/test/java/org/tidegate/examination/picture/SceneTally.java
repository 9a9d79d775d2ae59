package org.tidegate.examination.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tidegate.finding.PictureFinding.CassetteFinding;
import org.tidegate.finding.PictureFinding.Line;
import org.tidegate.otherhand.OtherHand;
import org.tidegate.otherhand.Truth;
import org.tidegate.render.TestScene;
import org.tidegate.rules.Rules;
import org.tidegate.thirdhand.ThirdHand;

/** How often the finders are right on rendered pictures. */
final class SceneTally {

    /** Contrast of a line below which nothing is asked of the finders. */
    private static final double FAINT = 0.1;

    private final SceneFinder finder;
    int pictures;
    int withCassette;
    int found;
    int countRight;
    int documentRight;
    int readable;
    int cassettesFound;
    int controlRight;
    int lined;
    int linedFound;
    int blank;
    int blankFalse;

    SceneTally(Rules rules) {
        finder = new SceneFinder(rules.protocols(), rules.pictures(), ZoneReader.NONE);
    }

    /** What is told of a test line; without a word, it counts neither way. */
    private enum Test {
        LINED,
        BLANK,
        UNTOLD;

        static Test of(boolean line) {
            return line ? LINED : BLANK;
        }
    }

    /**
     * What a picture shows.
     *
     * @param control whether its cassettes have a control line that should be found
     * @param test whether its cassettes have a test line
     */
    private record Shown(int cassettes, boolean document, boolean control, Test test, String line) {}

    /** @return what went wrong, in words */
    List<String> add(TestScene truth) {
        Shown shown =
                new Shown(truth.cassettes(), truth.document(), true, Test.of(truth.test() > 0), "T of " + truth.test());
        return add(shown, finder.read(FinePicture.of(truth.image())));
    }

    /** @return what went wrong, in words */
    List<String> add(OtherHand.Picture picture) {
        Truth truth = picture.truth();
        Shown shown = new Shown(
                truth.cassettes(), truth.document(), true, Test.of(truth.lined()), "T of " + truth.testContrast());
        return add(shown, finder.read(FinePicture.of(picture.image())));
    }

    /**
     * The test line counts on pictures of one cassette only: on several, the truth tells that of the first. A control line they
     * all have, unless the first has none.
     *
     * @return what went wrong, in words
     */
    List<String> add(ThirdHand.Picture picture) {
        org.tidegate.thirdhand.Truth truth = picture.truth();
        Test test = truth.test() >= FAINT ? Test.LINED : truth.test() == 0 ? Test.BLANK : Test.UNTOLD;
        Shown shown = new Shown(
                truth.cassettes(),
                truth.document(),
                truth.control() > FAINT,
                truth.cassettes() == 1 ? test : Test.UNTOLD,
                "T of " + truth.test());
        return add(shown, finder.read(FinePicture.of(picture.image())));
    }

    private synchronized List<String> add(Shown truth, SceneReader.Scene seen) {
        List<CassetteFinding> cassettes = seen.cassettes();
        List<String> wrong = new ArrayList<>();
        pictures++;
        withCassette += truth.cassettes() > 0 ? 1 : 0;
        found += truth.cassettes() > 0 && !cassettes.isEmpty() ? 1 : 0;
        countRight += right(
                cassettes.size() == truth.cassettes(),
                cassettes.size() + " cassettes, not " + truth.cassettes(),
                wrong);
        documentRight += right(
                seen.document().present() == truth.document(),
                truth.document() ? "document missed" : "no document there",
                wrong);
        readable += right(
                seen.legibility().orElseThrow().readable(),
                "unreadable: " + seen.legibility().orElseThrow().why(),
                wrong);
        if (cassettes.size() == truth.cassettes()) {
            cassettes.forEach(c -> lines(c, truth, wrong));
        }
        return wrong;
    }

    private void lines(CassetteFinding cassette, Shown truth, List<String> wrong) {
        boolean test = present(cassette, "T");
        if (truth.control()) {
            cassettesFound++;
            controlRight += right(present(cassette, "C"), "C missed " + cassette.lines(), wrong);
        }
        switch (truth.test()) {
            case LINED -> {
                lined++;
                linedFound += right(test, truth.line() + " missed " + cassette.lines(), wrong);
            }
            case BLANK -> {
                blank++;
                blankFalse += 1 - right(!test, "no T there " + cassette.lines(), wrong);
            }
            case UNTOLD -> {}
        }
    }

    private static int right(boolean right, String words, List<String> wrong) {
        if (!right) {
            wrong.add(words);
        }
        return right ? 1 : 0;
    }

    private static boolean present(CassetteFinding cassette, String line) {
        Line found = cassette.lines().get(line);
        return found != null && found.present();
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "pictures %d: cassette found %d of %d, count right %d, document right %d, readable %d;"
                        + " control line right %d of %d, test line found %d of %d, falsely %d of %d",
                pictures,
                found,
                withCassette,
                countRight,
                documentRight,
                readable,
                controlRight,
                cassettesFound,
                linedFound,
                lined,
                blankFalse,
                blank);
    }
}
