package org.tidegate.examination.picture;

import org.tidegate.render.TestScene;

/**
 * How often the finders are right on rendered pictures from ranges not used while tuning, a quarter of them with a test line:
 * {@code java -cp target/classes:target/test-classes:… org.tidegate.examination.picture.PictureMeasure [pictures, default 2000]}.
 */
public final class PictureMeasure {

    private static final long FIRST_SEED = 1_000_000;

    private PictureMeasure() {}

    public static void main(String[] arguments) {
        int pictures = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 2000;
        SceneTally tally = new SceneTally(LiveRules.read());
        for (int i = 0; i < pictures; i++) {
            tally.add(TestScene.draw(FIRST_SEED + i, true, 0.25));
            if ((i + 1) % 50 == 0 || i + 1 == pictures) {
                System.out.println(tally);
            }
        }
    }
}
