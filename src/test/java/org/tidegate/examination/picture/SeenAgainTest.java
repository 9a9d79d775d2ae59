package org.tidegate.examination.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
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
        return Copies.ALL.entrySet().stream().map(e -> Arguments.of(e.getKey(), e.getValue()));
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
        assertThat(HashWords.fine(words(other, a), words(other, b), 0))
                .isEqualTo(HashWords.fine(words(fingerprinter, a), words(fingerprinter, b), 0));
    }

    private static long[] words(Fingerprinter by, BufferedImage image) {
        return HashWords.of(by.of(new byte[0], Optional.of(image)).whole().orElseThrow());
    }

    private Fingerprints print(BufferedImage image) {
        return fingerprinter.of(new byte[] {(byte) files++}, Optional.of(image));
    }
}
