package org.tidegate.examination.picture;

import java.util.List;
import java.util.stream.LongStream;
import org.tidegate.otherhand.OtherHand;
import org.tidegate.render.TestScene;
import org.tidegate.thirdhand.ThirdHand;

/**
 * How often the finders are right on rendered pictures, a quarter of them with a test line:
 * {@code java -cp target/classes:target/test-classes:… org.tidegate.examination.picture.PictureMeasure [pictures] [first seed] [tuning|other|third]}, 2,000
 * unless said, with settings from the ranges kept back unless {@code tuning} is said. {@code other} takes the pictures of {@link OtherHand} instead, whose
 * author knew neither the finders nor the pictures they were tuned on; seeds 1 to 1950 have since been looked at.
 * {@code third} takes those of {@link ThirdHand} in the same way, of which 1 to 100, 7001 to 7050 and 7101 to 7150 have been looked at. What went wrong is told by seed.
 */
public final class PictureMeasure {

    private static final long FIRST_SEED = 1_000_000;
    private static final int BATCH = 50;

    private PictureMeasure() {}

    public static void main(String[] arguments) {
        int pictures = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 2000;
        long first = arguments.length > 1 ? Long.parseLong(arguments[1]) : FIRST_SEED;
        String mode = arguments.length < 3 ? "" : arguments[2];
        SceneTally tally = new SceneTally(LiveRules.read());
        for (long from = first; from < first + pictures; from += BATCH) {
            LongStream.range(from, Math.min(from + BATCH, first + pictures))
                    .parallel()
                    .forEach(seed -> {
                        List<String> wrong = add(tally, mode, seed);
                        if (!wrong.isEmpty()) {
                            System.out.println(seed + ": " + wrong);
                        }
                    });
            System.out.println(tally);
        }
    }

    private static List<String> add(SceneTally tally, String mode, long seed) {
        return switch (mode) {
            case "other" -> tally.add(OtherHand.picture(seed));
            case "third" -> tally.add(ThirdHand.picture(seed));
            default -> tally.add(TestScene.draw(seed, !mode.equals("tuning"), seed % 4 == 0));
        };
    }
}
