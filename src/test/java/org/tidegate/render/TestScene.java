package org.tidegate.render;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A rendered photo with its truth, for measuring the finders: kits, colours, tables, cards, places, camera and light drawn from a seed.
 *
 * @param cassettes how many lie in view, none to two
 * @param document whether an identity document lies there
 * @param test strength of the test line of every cassette, 0 for none
 */
public record TestScene(BufferedImage image, int cassettes, boolean document, double test) {

    private static final int WIDTH = 960;
    private static final int HEIGHT = 720;

    /** Neighbouring seeds give a source of randomness much the same first numbers. */
    private static final long SPREAD = 0x9E3779B97F4A7C15L;

    /**
     * @param unseen with looks from the ranges kept for the final measurement
     * @param lined share of the pictures that have a test line
     */
    public static TestScene draw(long seed, boolean unseen, double lined) {
        Random random = new Random(seed * SPREAD);
        int cassettes = List.of(0, 1, 1, 1, 1, 1, 1, 2).get(random.nextInt(8));
        boolean document = random.nextInt(3) > 0;
        double test = random.nextDouble() < lined ? 0.1 + 0.8 * random.nextDouble() : 0;
        List<BufferedImage> sheets = new ArrayList<>();
        if (document) {
            sheets.add(CardPainter.paint(CardLook.random(random)));
        }
        for (int i = 0; i < cassettes; i++) {
            double control = 0.4 + 0.55 * random.nextDouble();
            sheets.add(CassettePainter.paint(CassetteLook.random(random, test, control, unseen), random));
        }
        List<Placed> things = inAColumn(sheets, random);
        double widthMm = (140 + 60 * random.nextDouble()) * (document ? 1.15 : 1);
        View view = View.random(random, WIDTH, HEIGHT, widthMm);
        LinearImage image = new Stage(Table.random(random), things, List.of(), view).draw();
        Optics.ordinary(random).apply(image, random);
        return new TestScene(image.coded(), cassettes, document, test);
    }

    private static List<Placed> inAColumn(List<BufferedImage> sheets, Random random) {
        double gap = 0.5 + 4 * random.nextDouble();
        double all = sheets.stream()
                        .mapToDouble(s -> s.getHeight() / Paint.SCALE + gap)
                        .sum()
                - gap;
        double turn = 0.5 * (random.nextDouble() - 0.5);
        double top = -all / 2;
        List<Placed> things = new ArrayList<>();
        for (BufferedImage sheet : sheets) {
            double height = sheet.getHeight() / Paint.SCALE;
            double down = top + height / 2;
            double half = random.nextBoolean() ? Math.PI : 0;
            things.add(new Placed(sheet, -down * Math.sin(turn), down * Math.cos(turn), turn + half));
            top += height + gap;
        }
        return things;
    }
}
