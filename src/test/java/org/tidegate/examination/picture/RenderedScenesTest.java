package org.tidegate.examination.picture;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tidegate.render.TestScene;

/** A handful of rendered pictures; {@link PictureMeasure} measures on many. */
class RenderedScenesTest {

    private static final int PICTURES = 8;

    @Test
    void findWhatLiesThere() {
        SceneTally tally = new SceneTally(LiveRules.read());
        for (int seed = 0; seed < PICTURES; seed++) {
            tally.add(TestScene.draw(seed, false, 0.5));
        }
        assertThat(tally.found).as("" + tally).isGreaterThanOrEqualTo(tally.withCassette - 1);
        assertThat(tally.countRight).as("" + tally).isGreaterThanOrEqualTo(PICTURES - 1);
        assertThat(tally.documentRight).as("" + tally).isGreaterThanOrEqualTo(PICTURES - 1);
        assertThat(tally.readable).as("" + tally).isEqualTo(PICTURES);
        assertThat(tally.blankFalse).as("" + tally).isZero();
    }
}
