package org.tidegate.examination.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidegate.finding.PictureFinding.Fingerprints;
import org.tidegate.render.OneKit;
import org.tidegate.rules.Protocol.CassetteShape;

/** What is written on a cassette, as a fingerprint: the same again is near, another is not, none is none. */
class WritingTest {

    private static final int WITHIN = LiveRules.read().pictures().sameWritingWithin();

    /** The share of differing bits is that of the angle (Charikar 2002, section 3; from memory): 1/6 at 30°, 1/2 at 90°. */
    @ParameterizedTest
    @ValueSource(ints = {0, 10, 30, 60, 90, 180})
    void bitsDifferByTheAngle(int degrees) {
        Random random = new Random(3);
        int cells = 2000;
        float[] one = new float[cells];
        float[] turned = new float[cells];
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = Math.sin(Math.toRadians(degrees));
        for (int i = 0; i < cells; i++) {
            one[i] = (float) random.nextGaussian();
            turned[i] = (float) (cos * one[i] + sin * random.nextGaussian());
        }
        KeyedSigns signs = new KeyedSigns(new byte[16], cells);
        assertThat((double) distance(signs.of(one), signs.of(turned)) / KeyedSigns.BITS)
                .isCloseTo(degrees / 180.0, within(0.05));
    }

    @Test
    void underAnotherKeyNothingIsAlike() {
        float[] field = field(1, true, 0).orElseThrow();
        byte[] other = new byte[16];
        other[0] = 1;
        String one = new KeyedSigns(new byte[16], field.length).of(field);
        String two = new KeyedSigns(other, field.length).of(field);
        assertThat(one).hasSize(128).isEqualTo(new KeyedSigns(new byte[16], field.length).of(field));
        assertThat(distance(one, two)).isBetween(200, 312);
    }

    @Test
    void theSameCassetteIsFoundAgainBesideAnotherCardAndAnotherIsNot() {
        KeyedSigns signs = new KeyedSigns(new byte[16], Written.CELLS);
        SeenWriting seen = new SeenWriting(WITHIN);
        for (int cassette : List.of(1, 13, 22)) {
            seen.add(cassette, signs.of(field(cassette, true, 0).orElseThrow()));
        }
        String again = signs.of(field(13, true, 1).orElseThrow());
        assertThat(seen.find(again)).containsExactly(13L);
        seen.forget(13);
        assertThat(seen.find(again)).isEmpty();
    }

    @Test
    void whereNothingIsWrittenOrTheKitNamesNoPlaceThereIsNothingToCompare() {
        assertThat(field(1, false, 0)).isEmpty();
        CassetteShape shape = LiveRules.read().protocols().get(0).cassette();
        CassetteShape silent = new CassetteShape(
                shape.aspect(),
                shape.windowFrom(),
                shape.windowTo(),
                shape.windowWidth(),
                shape.lines(),
                Optional.empty());
        Pixels tiny = new Pixels(2, 2, new int[4]);
        assertThat(Written.on(tiny, silent)).isEmpty();
        assertThat(Written.on(tiny, shape)).as("nothing to see").isEmpty();
    }

    @Test
    void aFingerprintOfAnotherFormIsRefused() {
        assertThat(new Fingerprints("aa", Optional.empty(), Optional.empty(), List.of(), List.of(), List.of("ab"))
                        .compared()
                        .written())
                .containsExactly("ab");
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> new SeenWriting(1).add(1, "ab"))
                .hasMessageContaining("128");
    }

    private static Optional<float[]> field(int cassette, boolean marked, int shot) {
        return SeenCassettes.in(OneKit.photo(cassette, marked, shot, OneKit.BESIDE)).written().stream()
                .findFirst();
    }

    private static int distance(String one, String two) {
        long[] a = HashWords.of(one);
        long[] b = HashWords.of(two);
        return HashWords.coarse(a, b, 0) + HashWords.fine(a, b, 0);
    }
}
