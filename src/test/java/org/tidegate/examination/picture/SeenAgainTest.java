package org.tidegate.examination.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.RescaleOp;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.tidegate.finding.PictureFinding.Fingerprints;

/** Copies as people make them are found again; pictures of something else are not. */
class SeenAgainTest {

    private static final int PICTURES = 20;

    private final Fingerprinter fingerprinter = new Fingerprinter(new byte[16]);

    /** Every copy is another file. */
    private int files;

    static Stream<Arguments> copies() {
        return Stream.of(
                Arguments.of("quality 40", (UnaryOperator<BufferedImage>) i -> recompressed(i, 0.4)),
                Arguments.of("half size", (UnaryOperator<BufferedImage>) i -> half(i)),
                Arguments.of("5 % off every edge", (UnaryOperator<BufferedImage>) i -> crop(i, 0.05, 0.05)),
                Arguments.of("5 % off the left", (UnaryOperator<BufferedImage>) i -> crop(i, 0.05, 0)),
                Arguments.of("brightness + 20 %", (UnaryOperator<BufferedImage>) i -> brighter(i, 1.2)),
                Arguments.of("quarter turn", (UnaryOperator<BufferedImage>) i -> Orientation.upright(i, 6)),
                Arguments.of("mirrored", (UnaryOperator<BufferedImage>) i -> Orientation.upright(i, 2)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("copies")
    void findsCopies(String name, UnaryOperator<BufferedImage> copy) {
        SeenBefore seen = new SeenBefore(LiveRules.read().pictures().sameWithin());
        for (int i = 0; i < PICTURES; i++) {
            seen.add(i, print(TestPictures.scene(480, 640, i)));
        }
        for (int i = 0; i < PICTURES; i++) {
            Fingerprints again = print(copy.apply(TestPictures.scene(480, 640, i)));
            assertThat(seen.find(again))
                    .as(name + " of picture " + i)
                    .extracting(SeenBefore.Seen::owner)
                    .containsExactly((long) i);
        }
    }

    @Test
    void aPlainSurfaceHasNoPerceptualFingerprint() {
        BufferedImage plain = new BufferedImage(640, 480, BufferedImage.TYPE_INT_RGB);
        assertThat(print(plain).whole()).isEmpty();
    }

    /** The key hides the hash, but keeps how far two pictures are apart. */
    @Test
    void anotherKeyGivesOtherBitsAndTheSameDistances() {
        Fingerprinter other = new Fingerprinter("another key, sixteen".getBytes(StandardCharsets.UTF_8));
        BufferedImage a = TestPictures.scene(480, 640, 1);
        BufferedImage b = TestPictures.scene(480, 640, 2);
        assertThat(words(other, a)).isNotEqualTo(words(fingerprinter, a));
        assertThat(HashWords.distance(words(other, a), words(other, b), 0))
                .isEqualTo(HashWords.distance(words(fingerprinter, a), words(fingerprinter, b), 0));
    }

    private static long[] words(Fingerprinter by, BufferedImage image) {
        return HashWords.of(by.of(new byte[0], Optional.of(image)).whole().orElseThrow());
    }

    private Fingerprints print(BufferedImage image) {
        return fingerprinter.of(new byte[] {(byte) files++}, Optional.of(image));
    }

    private static BufferedImage recompressed(BufferedImage image, double quality) {
        byte[] jpeg = TestPictures.jpeg(image, quality, false);
        return new PictureDecoder(12_000_000)
                .decode(jpeg, PictureFormat.JPEG, 1)
                .image()
                .orElseThrow();
    }

    private static BufferedImage half(BufferedImage image) {
        BufferedImage out = new BufferedImage(image.getWidth() / 2, image.getHeight() / 2, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = out.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.drawImage(image, 0, 0, out.getWidth(), out.getHeight(), null);
        g.dispose();
        return out;
    }

    private static BufferedImage crop(BufferedImage image, double left, double others) {
        int w = image.getWidth();
        int h = image.getHeight();
        int x = (int) (w * left);
        int y = (int) (h * others);
        return Shrink.toLongSide(image.getSubimage(x, y, (int) (w * (1 - others)) - x, h - 2 * y), w + h);
    }

    private static BufferedImage brighter(BufferedImage image, double by) {
        return new RescaleOp((float) by, 0, null).filter(image, null);
    }
}
