package org.tidegate.examination.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.tidegate.finding.PictureFinding.Fingerprints;

class SeenBeforeTest {

    private final Random random = new Random(20260504);

    /** Against comparing with every entry: nothing within the distance is missed and nothing else is named. */
    @Test
    void findsWhatComparingWithEveryEntryFinds() {
        for (int within : new int[] {0, 15, HashIndex.COARSE_WITHIN}) {
            SeenBefore seen = new SeenBefore(within);
            for (int i = 0; i < 3_000; i++) {
                seen.add(i, print(draw()));
            }
            long[] asked = draw();
            for (int flips = 0; flips <= 60; flips++) {
                seen.add(10_000 + flips, print(flipped(asked, flips)));
            }
            List<Long> found =
                    seen.find(print(asked)).stream().map(SeenBefore.Seen::owner).toList();
            assertThat(found).as("within " + within).hasSize(within + 1).allMatch(o -> o <= 10_000 + within);
        }
    }

    @Test
    void theSameBytesAreFoundWithoutAnythingToSee() {
        SeenBefore seen = new SeenBefore(31);
        Fingerprints blank =
                new Fingerprints("aa", Optional.empty(), Optional.empty(), List.of(), List.of(), List.of());
        seen.add(7L, blank);
        assertThat(seen.find(blank)).containsExactly(new SeenBefore.Seen(7L, 0));
    }

    @Test
    void whatIsForgottenIsNotFound() {
        SeenBefore seen = new SeenBefore(31);
        Fingerprints p = print(draw());
        seen.add(7L, p);
        seen.forget(7L);
        assertThat(seen.find(p)).isEmpty();
    }

    @Test
    void aTurnedOrCroppedCopyIsFoundByItsViews() {
        SeenBefore seen = new SeenBefore(31);
        long[] before = draw();
        seen.add(7L, print(before));
        String near = HashWords.hex(flipped(before, 7));
        Optional<String> other = Optional.of(HashWords.hex(draw()));
        assertThat(seen.find(new Fingerprints("bb", other, other, List.of(near), List.of(), List.of())))
                .containsExactly(new SeenBefore.Seen(7L, 7));
        assertThat(seen.find(new Fingerprints("bb", other, other, List.of(), List.of(near), List.of())))
                .containsExactly(new SeenBefore.Seen(7L, 7));
    }

    /** A shared table and kit look alike from afar: the coarse bits agree, the finer ones do not. */
    @Test
    void whatLooksTheSameOnlyFromAfarIsAnotherPicture() {
        SeenBefore seen = new SeenBefore(31);
        long[] before = draw();
        seen.add(7L, print(before));
        long[] other = before.clone();
        other[5] ^= 0xFFFF_FFFFL;
        assertThat(seen.find(print(other))).isEmpty();
    }

    private long[] draw() {
        return random.longs(8).toArray();
    }

    /** So many bits of either half. */
    private long[] flipped(long[] hash, int bits) {
        long[] out = hash.clone();
        for (int half = 0; half < 512; half += 256) {
            random.ints(half, half + 256).distinct().limit(bits).forEach(k -> out[k / 64] ^= 1L << (k % 64));
        }
        return out;
    }

    /** Other views are other files. */
    private static Fingerprints print(long[] hash) {
        Optional<String> hex = Optional.of(HashWords.hex(hash));
        return new Fingerprints(
                HexFormat.of().toHexDigits((long) Arrays.hashCode(hash)), hex, hex, List.of(), List.of(), List.of());
    }
}
