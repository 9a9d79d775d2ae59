package org.tidegate.render;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Random;

/**
 * A photo of an invented document with a machine-readable zone: TD1 or TD3, letters 2.4 mm high at 2.54 mm (ICAO Doc 9303-3 §4.2, from memory),
 * turned, leaning, out of focus, smeared, noisy, as JPEG.
 *
 * @param lines what the zone says
 * @param jpeg the file
 */
public record ZonePhoto(List<String> lines, byte[] jpeg) {

    private static final double SCALE = 20;
    private static final double CAPITAL = 2.4;
    private static final double PITCH = 2.54;
    private static final double LINE = 6.35;
    private static final String[] FAMILY = {"STRAKER", "HAVENOCK", "BRINEWELL", "DUNLARE", "KELSO<REY", "TARNWICK"};
    private static final String[] GIVEN = {"ROBIN", "MAREN<ISLA", "QUIM", "JOZEF", "NADIRA", "EWAN<K", "ZYX", "GUSTAV"};

    /**
     * @param capital height of a capital on the picture, pixels
     */
    public static ZonePhoto of(double capital, boolean page, Random r) {
        List<String> lines = page ? td3(r) : td1(r);
        double width = page ? 125 : 85.6;
        double height = page ? 88 : 53.98;
        BufferedImage sheet = sheet(lines, width, height, r);
        double seen = width * (1.15 + 0.2 * r.nextDouble());
        int pixels = (int) (seen * capital / CAPITAL);
        double tilt = 0.2;
        View view = new View(pixels, pixels * 3 / 4, seen, tilt * spread(r), tilt * spread(r));
        double turn = 0.15 * spread(r) + (r.nextBoolean() ? Math.PI : 0);
        LinearImage image = drawn(sheet, view, turn, new Color(40 + r.nextInt(120), 40 + r.nextInt(120), 40));
        image.defocus(0.08 * capital * r.nextDouble());
        image.motion(0.08 * capital * r.nextDouble(), Math.PI * r.nextDouble());
        image.noise(0.01 + 0.02 * r.nextDouble(), 0.005, r);
        return new ZonePhoto(lines, JpegFile.within(image.coded(), 0.7 + 0.25 * r.nextDouble(), 1 << 22));
    }

    private static double spread(Random r) {
        return 2 * r.nextDouble() - 1;
    }

    private static BufferedImage sheet(List<String> lines, double width, double height, Random r) {
        BufferedImage sheet =
                new BufferedImage((int) (width * SCALE), (int) (height * SCALE), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = sheet.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.transform(AffineTransform.getScaleInstance(SCALE, SCALE));
        g.setColor(new Color(200 + r.nextInt(50), 200 + r.nextInt(50), 200 + r.nextInt(50)));
        g.fillRect(0, 0, 200, 200);
        g.setColor(new Color(90 + r.nextInt(90), 80, 90));
        g.fillRect(5, 8, (int) (width * 0.27), (int) (width * 0.25));
        g.setColor(new Color(r.nextInt(60), r.nextInt(60), r.nextInt(60)));
        double left = (width - lines.get(0).length() * PITCH) / 2;
        double top = height - 5.5 - CAPITAL - (lines.size() - 1) * LINE;
        for (int i = 0; i < lines.size(); i++) {
            g.fill(ZoneFont.text(lines.get(i), left, top + i * LINE, CAPITAL, PITCH));
        }
        g.dispose();
        return sheet;
    }

    private static LinearImage drawn(BufferedImage sheet, View view, double turn, Color table) {
        LinearImage image = new LinearImage(view.width(), view.height());
        for (int y = 0; y < view.height(); y++) {
            for (int x = 0; x < view.width(); x++) {
                double[] sum = new double[3];
                for (int i = 0; i < 9; i++) {
                    double[] at = view.toTable(x + (i % 3 + 0.5) / 3, y + (Math.floorDiv(i, 3) + 0.5) / 3);
                    add(sum, colour(sheet, at, turn, table.getRGB()));
                }
                image.set(x, y, sum[0] / 9, sum[1] / 9, sum[2] / 9);
            }
        }
        return image;
    }

    private static int colour(BufferedImage sheet, double[] at, double turn, int table) {
        double u = at[0] * Math.cos(turn) + at[1] * Math.sin(turn);
        double v = at[1] * Math.cos(turn) - at[0] * Math.sin(turn);
        int x = (int) Math.floor(u * SCALE + sheet.getWidth() / 2.0);
        int y = (int) Math.floor(v * SCALE + sheet.getHeight() / 2.0);
        boolean on = x >= 0 && y >= 0 && x < sheet.getWidth() && y < sheet.getHeight();
        return on ? sheet.getRGB(x, y) : table;
    }

    private static void add(double[] sum, int rgb) {
        for (int c = 0; c < 3; c++) {
            sum[c] += Math.pow(((rgb >> (16 - 8 * c)) & 255) / 255.0, 2.2);
        }
    }

    private static List<String> td3(Random r) {
        String number = number(r);
        String birth = date(r, 50 + r.nextInt(50));
        String expiry = date(r, 27 + r.nextInt(9));
        String data = number + digit(number) + "UTO" + birth + digit(birth) + (r.nextBoolean() ? "F" : "M") + expiry
                + digit(expiry) + "<".repeat(14) + "0";
        String all = data.substring(0, 10) + data.substring(13, 20) + data.substring(21);
        return List.of(filled("P<UTO" + name(r), 44), data + digit(all));
    }

    private static List<String> td1(Random r) {
        String number = number(r);
        String first = filled("I<UTO" + number + digit(number), 30);
        String birth = date(r, 50 + r.nextInt(50));
        String expiry = date(r, 27 + r.nextInt(9));
        String second = birth + digit(birth) + "<" + expiry + digit(expiry) + "UTO" + "<".repeat(11);
        String all = first.substring(5) + second.substring(0, 7) + second.substring(8, 15) + second.substring(18);
        return List.of(first, second + digit(all), filled(name(r), 30));
    }

    private static String name(Random r) {
        return FAMILY[r.nextInt(FAMILY.length)] + "<<" + GIVEN[r.nextInt(GIVEN.length)];
    }

    private static String filled(String text, int length) {
        return (text + "<".repeat(length)).substring(0, length);
    }

    private static String number(Random r) {
        String signs = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
        StringBuilder number = new StringBuilder();
        for (int i = 0; i < 9; i++) {
            number.append(signs.charAt(r.nextInt(signs.length())));
        }
        return number.toString();
    }

    private static String date(Random r, int year) {
        return String.format(java.util.Locale.ROOT, "%02d%02d%02d", year, 1 + r.nextInt(12), 1 + r.nextInt(28));
    }

    /** ICAO Doc 9303-3 §4.9, by itself here. */
    private static int digit(String data) {
        int sum = 0;
        for (int i = 0; i < data.length(); i++) {
            int value = data.charAt(i) == '<' ? 0 : Character.digit(data.charAt(i), 36);
            sum += value * "731".charAt(i % 3) - value * '0';
        }
        return sum % 10;
    }
}
