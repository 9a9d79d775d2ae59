package org.tidegate.render;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Random;

/** Photos of different people that share one table, one camera position and one cassette type: what must not be taken for one another. */
public final class SharedTable {

    private static final int WIDTH = 640;
    private static final int HEIGHT = 480;
    private static final double WIDTH_MM = 150;
    private static final String MARKS = "ACEFHJKLMNPQRTUVWXY3479";

    private SharedTable() {}

    /**
     * @param table seed of the table that all stand at
     * @param person whose cassette, by its handwriting
     * @param holder whose card lies beside it
     * @param shot which photo of them: place, light and noise
     */
    public static BufferedImage photo(long table, int person, int holder, int shot) {
        Random hand = new Random(person * 7_919L + 1);
        Random card = new Random(holder * 104_729L + 2);
        Random random = new Random(person * 1_000_003L + holder * 10_007L + shot);
        CassetteLook cassette = CassetteLook.skerry20(0, 0.6, writing(hand));
        View view = new View(WIDTH, HEIGHT, WIDTH_MM, 0.05 * random.nextGaussian(), 0.05 * random.nextGaussian());
        List<Placed> things = List.of(
                lay(CardPainter.paint(CardLook.random(card)), -16, random),
                lay(CassettePainter.paint(cassette, hand), 25, random));
        LinearImage image = new Stage(Table.random(new Random(table)), things, List.of(), view).draw();
        Optics.clear().exposed(0.8 + 0.2 * random.nextDouble()).apply(image, random);
        return image.coded();
    }

    private static String writing(Random hand) {
        StringBuilder mark = new StringBuilder();
        for (int i = 0; i < 4; i++) {
            mark.append(MARKS.charAt(hand.nextInt(MARKS.length())));
        }
        return mark + " 4.5 0" + (6 + hand.nextInt(3)) + ":" + (10 + hand.nextInt(50));
    }

    private static Placed lay(BufferedImage sheet, double y, Random random) {
        return new Placed(
                sheet,
                2 * (random.nextDouble() - 0.5),
                y + 1.5 * (random.nextDouble() - 0.5),
                0.06 * (random.nextDouble() - 0.5));
    }
}
