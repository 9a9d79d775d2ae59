package org.tidegate.examination.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.tidegate.otherhand.OtherHand;
import org.tidegate.render.TestScene;

/** A handful of rendered pictures, as many as {@code simulation.share} asks for; {@link PictureMeasure} measures on many. */
class RenderedScenesTest {

    private static final int WHOLE = 80;
    private static final int PICTURES =
            (int) Math.max(4, WHOLE * Double.parseDouble(System.getProperty("simulation.share", "0.1")));
    private static final int MISSES = Math.max(1, PICTURES / 20);

    @Test
    void findWhatLiesThere() {
        SceneTally tally = new SceneTally(LiveRules.read());
        for (int seed = 0; seed < PICTURES; seed++) {
            tally.add(TestScene.draw(seed, false, seed % 2 == 0));
        }
        assertRight(tally);
        assertThat(tally.readable).as("" + tally).isEqualTo(PICTURES);
    }

    /** Of pictures whose author knew neither the finder nor the pictures it was tuned on. */
    @Test
    void findWhatLiesOnPicturesOfAnotherHand() {
        SceneTally tally = new SceneTally(LiveRules.read());
        for (int seed = 701; seed < 701 + PICTURES; seed++) {
            tally.add(OtherHand.picture(seed));
        }
        assertRight(tally);
    }

    /**
     * Each of these once showed a test line that is not there: the rim of the window (9700217), a draft upside down (9700303, 9800077) and the edge that
     * compression leaves beside a strong line (9820585, 9800105).
     */
    @Test
    void seeNoLineWhereNoneIs() {
        SceneTally tally = new SceneTally(LiveRules.read());
        LongStream.of(9700217, 9700303, 9800077, 9820585, 9800105)
                .forEach(seed -> tally.add(TestScene.draw(seed, true, false)));
        assertThat(tally.blank).isPositive();
        assertThat(tally.blankFalse).as("" + tally).isZero();
    }

    private static void assertRight(SceneTally tally) {
        assertThat(tally.found).as("" + tally).isGreaterThanOrEqualTo(tally.withCassette - MISSES);
        assertThat(tally.countRight).as("" + tally).isGreaterThanOrEqualTo(PICTURES - MISSES);
        assertThat(tally.documentRight).as("" + tally).isGreaterThanOrEqualTo(PICTURES - MISSES);
        assertThat(tally.controlRight).as("" + tally).isGreaterThanOrEqualTo(tally.cassettesFound - MISSES);
        assertThat(tally.blankFalse).as("" + tally).isZero();
    }
}
