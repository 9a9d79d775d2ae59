package org.tidegate.render;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Random;

/**
 * A cassette of the invented kit beside a card, photographed once or again: each shot at another table, from another place, in other light, beside
 * another person's card. What is written on it is a mark of four characters, the date and a time of one morning, all in one unsteady hand.
 *
 * @param image the photo
 * @param truth what is in view where: {@link #CASSETTE}, {@link #CARD}, or black
 */
public record OneKit(BufferedImage image, BufferedImage truth) {

    public static final int CASSETTE = Color.WHITE.getRGB();
    public static final int CARD = Color.RED.getRGB();

    /** Millimetres between the middles of card and cassette where they lie side by side. */
    public static final double BESIDE = 41;

    private static final int WIDTH = 960;
    private static final int HEIGHT = 720;
    private static final String MARKS = "ACEFHJKLMNPQRTUVWXY3479";
    private static final long SPREAD = 0x9E3779B97F4A7C15L;

    /**
     * @param cassette whose cassette, by its handwriting
     * @param marked whether anything is written on it
     * @param shot which photo of it
     * @param apart millimetres between the middles of card and cassette; below 38 the cassette lies on the card
     */
    public static OneKit photo(long cassette, boolean marked, long shot, double apart) {
        Random hand = new Random((cassette + 1) * SPREAD);
        String writing = writing(hand);
        CassetteLook look = CassetteLook.skerry20(0, 0.35 + 0.5 * hand.nextDouble(), marked ? writing : "");
        BufferedImage sheet = CassettePainter.paint(look, hand);
        Random random = new Random((cassette * 31 + shot + 7) * SPREAD);
        double turn = 2 * Math.PI * random.nextDouble();
        View view = View.random(random, WIDTH, HEIGHT, 125 + 40 * random.nextDouble());
        Placed card = lay(CardPainter.paint(CardLook.random(random)), -0.4 * apart, turn, random);
        Placed kit = lay(sheet, 0.6 * apart, turn + 0.1 * (random.nextDouble() - 0.5), random);
        LinearImage image = new Stage(Table.random(random), List.of(card, kit), List.of(), view).draw();
        Optics.ordinary(random).apply(image, random);
        return new OneKit(image.coded(), truth(card, kit, view));
    }

    private static BufferedImage truth(Placed card, Placed kit, View view) {
        BufferedImage truth = new BufferedImage(view.width(), view.height(), BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < view.height(); y++) {
            for (int x = 0; x < view.width(); x++) {
                double[] at = view.toTable(x + 0.5, y + 0.5);
                if (covers(kit, at)) {
                    truth.setRGB(x, y, CASSETTE);
                } else if (covers(card, at)) {
                    truth.setRGB(x, y, CARD);
                }
            }
        }
        return truth;
    }

    private static boolean covers(Placed thing, double[] at) {
        double[] on = thing.onSheet(at[0], at[1]);
        return thing.outside(at[0], at[1]) < 0 && (thing.sheet().getRGB((int) on[0], (int) on[1]) >>> 24) > 127;
    }

    private static String writing(Random hand) {
        StringBuilder mark = new StringBuilder();
        for (int i = 0; i < 4; i++) {
            mark.append(MARKS.charAt(hand.nextInt(MARKS.length())));
        }
        return mark + " 4.5 0" + (6 + hand.nextInt(3)) + ":" + (10 + hand.nextInt(50));
    }

    /** Beside the middle, across the direction in which things lie. */
    private static Placed lay(BufferedImage sheet, double aside, double turn, Random random) {
        double along = 3 * (random.nextDouble() - 0.5);
        double x = along * Math.cos(turn) - aside * Math.sin(turn);
        double y = along * Math.sin(turn) + aside * Math.cos(turn);
        return new Placed(sheet, x, y, turn);
    }
}
