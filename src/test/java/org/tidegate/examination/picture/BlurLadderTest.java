package org.tidegate.examination.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidegate.finding.PictureFinding.Legibility;
import org.tidegate.render.TestScene;

/** One scene, less and less in focus: its sharpness falls with every step, and at the end of the ladder a person is told that it is blurred. */
class BlurLadderTest {

    /** Defocus, radius in pixels of a picture of 960 and more. */
    private static final List<Double> STEPS = List.of(0.0, 2.0, 4.0, 6.0, 9.0, 13.0, 18.0, 26.0);

    private final SceneFinder finder =
            new SceneFinder(LiveRules.read().protocols(), LiveRules.read().pictures(), ZoneReader.NONE);

    @ParameterizedTest
    @ValueSource(longs = {3, 17, 29})
    void sharpnessFallsWithEveryStep(long seed) {
        List<Legibility> ladder =
                STEPS.stream().map(step -> legibility(seed, step)).toList();
        assertThat(ladder)
                .as("" + ladder)
                .isSortedAccordingTo(
                        Comparator.comparingDouble(Legibility::sharpness).reversed());
        assertThat(ladder.get(0).why()).doesNotContain("blur");
        assertThat(ladder.get(ladder.size() - 1).why()).contains("blur");
    }

    private Legibility legibility(long seed, double defocus) {
        return finder.read(FinePicture.of(TestScene.blurred(seed, defocus).image()))
                .legibility()
                .orElseThrow();
    }
}
