package org.tidegate.examination.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidegate.examination.picture.CassetteCrop.Cut;
import org.tidegate.examination.picture.CassetteCrop.Why;
import org.tidegate.examination.picture.CassetteCrop.Withheld;
import org.tidegate.finding.PictureFinding;
import org.tidegate.finding.PictureFinding.CassetteFinding;
import org.tidegate.finding.PictureFinding.Corner;
import org.tidegate.finding.PictureFinding.DocumentFinding;
import org.tidegate.render.OneKit;
import org.tidegate.rules.Rules;

/** What a cassette's crop shows, and when there is none. */
class CroppingTest {

    private static final Rules RULES = LiveRules.read();

    /** Nothing of a card, on drawn photos whose truth is known, whether the cassette lies beside the card or on it. */
    @ParameterizedTest
    @CsvSource({"1, 41", "2, 41", "3, 38", "4, 38", "5, 30", "6, 20", "10, 41", "26, 41", "47, 41"})
    void nothingOfTheCardComesAlong(long cassette, double apart) {
        SeenCassettes seen = SeenCassettes.in(OneKit.photo(cassette, true, 0, apart));
        assertThat(seen.crops()).hasSameSizeAs(seen.finding().cassettes());
        for (CassetteCrop crop : seen.crops()) {
            if (crop instanceof Cut cut) {
                BufferedImage truth = seen.truth(cut);
                assertThat(SeenCassettes.share(truth, OneKit.CARD))
                        .as("of the card")
                        .isLessThan(0.005);
                assertThat(SeenCassettes.share(truth, OneKit.CASSETTE))
                        .as("of the cassette")
                        .isGreaterThan(0.98);
            }
        }
    }

    @Test
    void aCassetteBesideACardIsCutOutWithTheLinesWhereTheKitHasThem() throws IOException {
        Cut cut = (Cut) SeenCassettes.in(OneKit.photo(1, true, 0, OneKit.BESIDE))
                .crops()
                .get(0);
        BufferedImage crop = image(cut);
        assertThat(crop.getWidth()).isEqualTo(cut.shape().width()).isBetween(300, Cropping.LONGEST);
        assertThat(crop.getRGB(0, 0) >>> 24).as("corners are see-through").isZero();
        CropShape.Place control = cut.shape().lines().get(1);
        assertThat(control.line()).isEqualTo("C");
        assertThat((double) reddestColumn(crop) / crop.getWidth())
                .as("the drawn control line")
                .isCloseTo(control.at(), within(0.04));
    }

    private static int reddestColumn(BufferedImage crop) {
        int middle = crop.getHeight() / 2;
        int best = 0;
        int most = Integer.MIN_VALUE;
        for (int x = crop.getWidth() / 3; x < crop.getWidth() * 2 / 3; x++) {
            Color c = new Color(crop.getRGB(x, middle));
            int red = 2 * c.getRed() - c.getGreen() - c.getBlue();
            if (red > most) {
                most = red;
                best = x;
            }
        }
        return best;
    }

    @Test
    void anOutlineThatLiesInADocumentIsNotCutOut() {
        assertThat(why(box(100, 100, 400, 200), document(90, 190, 500, 500))).isEqualTo(Why.COVERS_DOCUMENT);
        assertThat(why(box(100, 100, 400, 200), document(90, 199, 500, 500)))
                .as("outlines that touch")
                .isNull();
    }

    @Test
    void whereNobodyCouldTellNothingIsCutOut() {
        assertThat(why(box(100, 100, 400, 200), DocumentFinding.notJudged())).isEqualTo(Why.DOCUMENT_UNJUDGED);
        assertThat(why(
                        box(100, 100, 400, 200),
                        new DocumentFinding(
                                true, true, 1, List.of(), List.of(), List.of(), List.of(), Optional.empty())))
                .as("a document without a place")
                .isEqualTo(Why.COVERS_DOCUMENT);
        assertThat(why(box(100, 100, 199, 130), document(500, 500, 900, 700))).isEqualTo(Why.TOO_SMALL);
    }

    private static Why why(List<Corner> box, DocumentFinding document) {
        Cropping cropping = cropping(box, document, grey(), 1);
        return cropping.all().get(0) instanceof Withheld w ? w.why() : null;
    }

    @Test
    void beyondThePicturesRimNothingIsMadeUp() {
        BufferedImage grey = grey();
        Cut cut =
                (Cut) cropping(box(-10, 300, 390, 420), absent(), grey, 1).all().get(0);
        assertThat(cut.shape().width()).as("without what is not there").isLessThan(390);
        for (List<Corner> away : List.of(box(-100, 300, 300, 420), box(2000, 300, 2400, 420))) {
            assertThat(cropping(away, absent(), grey, 1).all()).containsExactly(new Withheld(0, 0, Why.OUTLINE_UNSURE));
        }
    }

    private static BufferedImage grey() {
        BufferedImage grey = new BufferedImage(1600, 1200, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = grey.createGraphics();
        g.setColor(Color.GRAY);
        g.fillRect(0, 0, 1600, 1200);
        g.dispose();
        return grey;
    }

    @ParameterizedTest
    @ValueSource(ints = {1600, 4000, 12000})
    void howeverLargeThePictureTheCropIsBounded(int width) {
        BufferedImage working = grey();
        PictureFinding finding =
                finding(List.of(cassette(box(0, 0, width, width / 2))), absent(), width, width * 3 / 4);
        Cropping cropping = new Cropping(RULES.protocols());
        cropping.add(0, finding, working);
        Cut cut = (Cut) cropping.all().get(0);
        assertThat(cut.shape().width()).isEqualTo(Cropping.LONGEST);
        assertThat(cut.shape().height()).isBetween(300, Cropping.BROADEST);
        assertThat(cut.png().length).isLessThan(4 * Cropping.LONGEST * Cropping.BROADEST);
    }

    @Test
    void ofManyCassettesTheFirstDozenAreCutOut() {
        List<CassetteCrop> all =
                cropping(box(100, 100, 400, 200), absent(), grey(), 14).all();
        assertThat(all).hasSize(14);
        assertThat(all.subList(0, 12)).allMatch(Cut.class::isInstance);
        assertThat(all.get(13)).isEqualTo(new Withheld(0, 13, Why.TOO_MANY));
    }

    private static Cropping cropping(List<Corner> box, DocumentFinding document, BufferedImage image, int times) {
        Cropping cropping = new Cropping(RULES.protocols());
        List<CassetteFinding> cassettes = Collections.nCopies(times, cassette(box));
        cropping.add(0, finding(cassettes, document, image.getWidth(), image.getHeight()), image);
        return cropping;
    }

    private static CassetteFinding cassette(List<Corner> box) {
        return new CassetteFinding(box, Optional.of("SKERRY-20"), 1, Map.of());
    }

    private static PictureFinding finding(
            List<CassetteFinding> cassettes, DocumentFinding document, int width, int height) {
        return new PictureFinding(
                "2",
                Optional.empty(),
                "image/jpeg",
                width,
                height,
                PictureFinding.Kind.PHOTO,
                PictureFinding.Decoding.DECODED,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                cassettes,
                document,
                Optional.empty(),
                List.of());
    }

    private static List<Corner> box(double left, double top, double right, double low) {
        return List.of(new Corner(left, top), new Corner(right, top), new Corner(right, low), new Corner(left, low));
    }

    private static DocumentFinding document(double left, double top, double right, double low) {
        return new DocumentFinding(
                true, true, 1, box(left, top, right, low), List.of(), List.of(), List.of(), Optional.empty());
    }

    private static DocumentFinding absent() {
        return new DocumentFinding(false, true, 0, List.of(), List.of(), List.of(), List.of(), Optional.empty());
    }

    private static BufferedImage image(Cut cut) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(cut.png()));
    }

    /** On a passport's page of its own colour this one's outline took in a quarter of the page. */
    @Test
    void anOutlineMuchLongerThanItsKitIsNotKept() {
        assertThat(SeenCassettes.in(OneKit.photo(5103, true, 0, 25)).crops())
                .isNotEmpty()
                .allSatisfy(crop -> assertThat(crop).isInstanceOf(CassetteCrop.Withheld.class));
    }
}
