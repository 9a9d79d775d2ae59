package org.tidegate.examination.picture;

import java.util.List;
import org.tidegate.render.TestScene;

/**
 * How often the finders are right on rendered pictures, a quarter of them with a test line:
 * {@code java -cp target/classes:target/test-classes:… org.tidegate.examination.picture.PictureMeasure [pictures] [first seed] [tuning]}, 2,000 unless
 * said, from ranges not used while tuning unless {@code tuning} is said. What went wrong is told by seed.
 */
public final class PictureMeasure {

    private static final long FIRST_SEED = 1_000_000;

    private PictureMeasure() {}

    public static void main(String[] arguments) {
        int pictures = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 2000;
        long first = arguments.length > 1 ? Long.parseLong(arguments[1]) : FIRST_SEED;
        boolean unseen = arguments.length < 3 || !arguments[2].equals("tuning");
        SceneTally tally = new SceneTally(LiveRules.read());
        for (int i = 0; i < pictures; i++) {
            List<String> wrong = tally.add(TestScene.draw(first + i, unseen, 0.25));
            if (!wrong.isEmpty()) {
                System.out.println((first + i) + ": " + wrong);
            }
            if ((i + 1) % 50 == 0 || i + 1 == pictures) {
                System.out.println(tally);
            }
        }
    }
}
