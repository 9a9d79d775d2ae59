package org.tidegate.examination.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against published values of the method (../shared/data/pictures/hash-pdq, BSD-3) with the tolerance documented there. */
class PerceptualHashTest {

    /** Documented tolerance between implementations where quality is 80 or more. */
    private static final int TOLERANCE = 10;

    @Test
    void givesThePublishedValues() throws Exception {
        Path root = OutsideData.path("pictures/hash-pdq");
        for (CSVRecord row : OutsideData.rows(root.resolve("expected-pdq.csv"), ',')) {
            if (!root.resolve(row.get("file")).toFile().exists()) {
                continue;
            }
            PerceptualHash hash = hash(root.resolve(row.get("file")));
            assertThat(distance(hash.whole(), published(row.get("pdq256_hex"))))
                    .as(row.get("file"))
                    .isLessThanOrEqualTo(TOLERANCE);
            assertThat(hash.quality()).as(row.get("file")).isEqualTo(Integer.parseInt(row.get("quality")));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2-rotate-90",
                "3-rotate-180",
                "4-rotate-270",
                "5-flipx",
                "6-flipy",
                "7-flip-plus-1",
                "8-flip-minus-1"
            })
    void aTurnedOrMirroredCopyIsAmongTheVariants(String name) {
        Path root = OutsideData.path("pictures/hash-pdq/dih");
        long[] original = hash(root.resolve("bridge-1-original.jpg")).whole();
        List<long[]> variants = hash(root.resolve("bridge-" + name + ".jpg")).turned();
        assertThat(variants.stream().mapToInt(v -> distance(original, v)).min().orElseThrow())
                .as(name)
                .isLessThanOrEqualTo(TOLERANCE);
    }

    private static PerceptualHash hash(Path file) {
        Decoded decoded = new PictureDecoder(40_000_000).decode(OutsideData.bytes(file), PictureFormat.JPEG, 1);
        return PerceptualHash.of(Luma.of(decoded.image().orElseThrow()));
    }

    private static int distance(long[] a, long[] b) {
        return HashWords.coarse(a, b, 0);
    }

    /** Published as 16-bit words, last first, bit k of the hash in bit k mod 16 of word k / 16. */
    private static long[] published(String hex) {
        byte[] bytes = HexFormat.of().parseHex(hex);
        long[] words = new long[4];
        for (int k = 0; k < 256; k++) {
            int bit = bytes[31 - k / 8] >> (k % 8) & 1;
            words[k / 64] |= (long) bit << (k % 64);
        }
        return words;
    }
}
