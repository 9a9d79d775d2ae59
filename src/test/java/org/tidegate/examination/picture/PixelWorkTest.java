package org.tidegate.examination.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.tidegate.finding.PictureFinding.Corner;

/** The work on many pixels at once gives what its definition gives, taken place by place. */
class PixelWorkTest {

    private static final int W = 37;
    private static final int H = 23;
    private final Random random = new Random(20260504);

    /** By the definition of a closing (Serra 1982): the smallest of the largest about each place. */
    @Test
    void aClosingIsWhatItsDefinitionSays() {
        float[] luma = new float[W * H];
        for (int i = 0; i < luma.length; i++) {
            luma[i] = 255 * random.nextFloat();
        }
        for (int reach : new int[] {1, 2, 5, 30}) {
            float[] closed = extreme(extreme(luma, reach, 1), reach, -1);
            float[] dark = ThinDark.of(luma, W, H, reach);
            for (int i = 0; i < luma.length; i++) {
                assertThat(dark[i]).isEqualTo((closed[i] - luma[i]) / Math.max(20, closed[i]));
            }
            assertThat(ThinDark.widened(luma, W, H, reach)).isEqualTo(extreme(luma, reach, 1));
        }
    }

    @Test
    void theMiddleIsCountedToItsStep() {
        assertThat(Median.of(new float[] {9, 1, 255, 3, 7}, 255, 255)).isEqualTo(7);
        assertThat(Median.of(new float[] {0.2504f, 0, 1}, 1, 1000)).isCloseTo(0.25f, within(1e-6f));
        assertThat(Median.of(new float[] {255}, 255, 255)).isEqualTo(255);
    }

    @Test
    void channelsLieBetweenTheirPixels() {
        Pixels pixels = new Pixels(2, 2, new int[] {0xff0000, 0x00ff00, 0x0000ff, 0xffffff});
        assertThat(channels(pixels.packedAt(0, 0))).containsExactly(255, 0, 0);
        assertThat(channels(pixels.packedAt(0.5, 0))).containsExactly(127.5, 127.5, 0);
        assertThat(channels(pixels.packedAt(0.5, 0.5))).containsExactly(127.5, 127.5, 127.5);
        assertThat(channels(pixels.packedAt(-9, 1e9))).as("the border goes on").satisfies(c -> {
            assertThat(c[0]).isBetween(0.0, 25.0);
            assertThat(c[2]).isBetween(230.0, 255.0);
        });
    }

    /** Middles of pixels lie at whole numbers. */
    @Test
    void anUprightPieceIsThePictureItself() {
        int[] rgb = random.ints((long) W * H, 0, 0x1000000).toArray();
        Pixels pixels = new Pixels(W, H, rgb);
        Pixels piece = Homography.toQuad(new Quad(
                        new Corner(3.5, 4.5), new Corner(13.5, 4.5), new Corner(13.5, 9.5), new Corner(3.5, 9.5)))
                .rectify(pixels, 10, 5);
        for (int i = 0; i < 50; i++) {
            assertThat(piece.rgb()[i]).isEqualTo(rgb[(5 + i / 10) * W + 4 + i % 10]);
        }
    }

    @Test
    void aHullByRowsIsTheHull() {
        List<Corner> points = IntStream.range(0, 60)
                .mapToObj(i -> new Corner(random.nextInt(40), i / 3))
                .sorted((p, q) -> p.y() == q.y() ? Double.compare(p.x(), q.x()) : Double.compare(p.y(), q.y()))
                .toList();
        List<Corner> hull = Hull.of(points);
        for (int i = 0; i < hull.size(); i++) {
            Corner from = hull.get(i);
            Corner to = hull.get((i + 1) % hull.size());
            assertThat(points).as("clockwise, nothing outside").allMatch(p -> Quad.cross(from, to, p) >= 0);
        }
        assertThat(hull).isSubsetOf(points);
    }

    /** The shadow of a body's edge takes a tenth of the light from there on. */
    @Test
    void lightThatFallsOffIsNoRim() {
        int[] strip = new int[240 * 8];
        Arrays.setAll(strip, i -> grey(i % 240 < 55 ? 230 : 205));
        assertThat(Membrane.ends(new Pixels(240, 8, strip))[0]).isLessThan(0.03);
        Arrays.setAll(strip, i -> grey(i % 240 < 20 ? 230 : i % 240 < 28 ? 150 : 205));
        assertThat(Membrane.ends(new Pixels(240, 8, strip))[0]).isCloseTo(31.0 / 240, within(0.01));
    }

    private static int grey(int level) {
        return level << 16 | level << 8 | level;
    }

    private static double[] channels(long packed) {
        return IntStream.range(0, 3)
                .mapToDouble(c -> Pixels.channelOf(packed, c) / 1024.0)
                .toArray();
    }

    private static float[] extreme(float[] values, int reach, int sign) {
        float[] out = new float[values.length];
        for (int i = 0; i < out.length; i++) {
            int x = i % W;
            int y = i / W;
            double most = Double.NEGATIVE_INFINITY;
            for (int v = Math.max(0, y - reach); v <= Math.min(H - 1, y + reach); v++) {
                for (int u = Math.max(0, x - reach); u <= Math.min(W - 1, x + reach); u++) {
                    most = Math.max(most, sign * values[v * W + u]);
                }
            }
            out[i] = (float) (sign * most);
        }
        return out;
    }
}
