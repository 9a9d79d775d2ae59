package org.tidegate.sample;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * Draws the sample morning's photos: a cassette with handwriting beside an invented card, on a table. The model: flat objects in
 * the picture plane, drawn at 6 pixels a millimetre and turned by up to 14 degrees; one soft light falling off across the table;
 * Gaussian sensor noise; box blur for a photo out of focus; a linear darkening for a dark cabin; JPEG. Deterministic by seed.
 */
final class Shots {

    private static final int WIDTH = 960;
    private static final int HEIGHT = 720;
    private static final double MM = 6;

    private Shots() {}

    static byte[] jpeg(Shot shot, Booking booking, long seed) {
        Random random = new Random(seed * 7919);
        BufferedImage image = table(random);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        if (shot != Shot.NEITHER && shot != Shot.CARD_ALONE) {
            double y = shot == Shot.CASSETTE_ALONE ? 0.5 : 0.76;
            place(g, 0.5, y, random);
            cassette(g, booking, random);
        }
        if (shot != Shot.NEITHER && shot != Shot.CASSETTE_ALONE) {
            place(g, 0.5, shot == Shot.CARD_ALONE ? 0.5 : 0.33, random);
            card(g, booking, random);
        }
        g.dispose();
        BufferedImage seen = shot == Shot.BLURRED ? blur(blur(blur(image, 15), 15), 15) : blur(image, 3);
        expose(seen, shot == Shot.DARK ? 0.07 : 1, random);
        return encode(seen, 0.82f);
    }

    private static BufferedImage table(Random random) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        Color base = Color.getHSBColor(
                random.nextFloat(), 0.25f + 0.2f * random.nextFloat(), 0.35f + 0.2f * random.nextFloat());
        g.setColor(base);
        g.fillRect(0, 0, WIDTH, HEIGHT);
        g.setColor(base.darker());
        for (int y = random.nextInt(60); y < HEIGHT; y += 60 + random.nextInt(50)) {
            g.fillRect(0, y, WIDTH, 2);
        }
        g.dispose();
        return image;
    }

    private static void place(Graphics2D g, double x, double y, Random random) {
        AffineTransform t = AffineTransform.getTranslateInstance(
                WIDTH * x + 30 * random.nextDouble() - 15, HEIGHT * y + 14 * random.nextDouble() - 7);
        t.rotate(Math.toRadians(28 * random.nextDouble() - 14) * (y == 0.5 ? 1 : 0.35));
        t.scale(MM, MM);
        g.setTransform(t);
    }

    /** 70 × 20 mm, window and well on the long axis, mark and time by hand. */
    private static void cassette(Graphics2D g, Booking booking, Random random) {
        g.setColor(new Color(0, 0, 0, 70));
        g.fill(new RoundRectangle2D.Double(-34.4, -9.2, 70, 20, 4, 4));
        g.setColor(new Color(246, 247, 244));
        g.fill(new RoundRectangle2D.Double(-35, -10, 70, 20, 4, 4));
        g.setColor(new Color(214, 217, 213));
        g.setStroke(new BasicStroke(0.35f));
        g.draw(new RoundRectangle2D.Double(-34, -9, 68, 18, 3.5, 3.5));
        g.setColor(new Color(176, 180, 176));
        g.fill(new RoundRectangle2D.Double(-9, -4, 20, 8, 2, 2));
        g.setColor(new Color(250, 249, 247));
        g.fill(new RoundRectangle2D.Double(-7.5, -2.8, 17, 5.6, 0.8, 0.8));
        g.setColor(new Color(158, 38, 82));
        g.fill(new java.awt.geom.Rectangle2D.Double(-3.6, -2.8, 1.0, 5.6));
        if (random.nextInt(5) == 0) {
            g.setColor(new Color(196, 110, 140));
            g.fill(new java.awt.geom.Rectangle2D.Double(3.6, -2.8, 1.0, 5.6));
        }
        g.setColor(new Color(176, 180, 176));
        g.fill(new Ellipse2D.Double(18.5, -4, 8, 8));
        g.setColor(new Color(228, 230, 226));
        g.fill(new Ellipse2D.Double(20.3, -2.2, 4.4, 4.4));
        g.setColor(new Color(40, 44, 60));
        text(g, "C", Font.BOLD, 2.8, -4.2, -5.2);
        text(g, "T", Font.BOLD, 2.8, 3.0, -5.2);
        text(g, booking.kit(), Font.BOLD, 2.4, -8, 7.4);
        g.setColor(new Color(24, 36, 120));
        text(g, booking.ref().substring(3) + " 4/5", Font.ITALIC, 4.2, -32.5, 1.6);
    }

    /** ISO/IEC 7810 ID-1: 85.60 × 53.98 mm. */
    private static void card(Graphics2D g, Booking booking, Random random) {
        g.setColor(new Color(0, 0, 0, 70));
        g.fill(new RoundRectangle2D.Double(-42.2, -26.2, 85.6, 53.98, 6, 6));
        g.setColor(new Color(232, 238, 241));
        g.fill(new RoundRectangle2D.Double(-42.8, -27, 85.6, 53.98, 6, 6));
        g.setColor(Color.getHSBColor(random.nextFloat(), 0.7f, 0.5f));
        g.fill(new java.awt.geom.Rectangle2D.Double(-42.8, -22, 85.6, 6.5));
        g.setColor(Color.WHITE);
        text(g, "CREW CARD", Font.BOLD, 4.4, -38, -17.2);
        portrait(g, random);
        String[] lines = {
            "Surname",
            booking.family().toUpperCase(java.util.Locale.ROOT),
            "Given names",
            booking.given(),
            "Born",
            booking.born()
        };
        for (int i = 0; i < lines.length; i++) {
            g.setColor(i % 2 == 0 ? new Color(110, 120, 126) : new Color(22, 26, 32));
            text(g, lines[i], i % 2 == 0 ? Font.PLAIN : Font.BOLD, i % 2 == 0 ? 2.4 : 4.2, -9, -10 + i * 5.6);
        }
    }

    private static void portrait(Graphics2D g, Random random) {
        g.setColor(new Color(196, 208, 216));
        g.fill(new java.awt.geom.Rectangle2D.Double(-38, -12, 24, 31));
        g.setColor(Color.getHSBColor(random.nextFloat(), 0.5f, 0.4f));
        g.fill(new Ellipse2D.Double(-36.5, 9, 21, 16));
        g.setColor(new Color(196, 208, 216));
        g.fill(new java.awt.geom.Rectangle2D.Double(-38, 19, 24, 7));
        g.setColor(new Color(232, 238, 241));
        g.fill(new java.awt.geom.Rectangle2D.Double(-38, 19, 24, 7.2));
        g.setColor(new Color(70 + random.nextInt(60), 50, 40));
        g.fill(new Ellipse2D.Double(-33, -9, 14, 16));
        g.setColor(new Color(226, 186 - random.nextInt(60), 150 - random.nextInt(50)));
        g.fill(new Ellipse2D.Double(-31.6, -6.4, 11.2, 15));
        g.setColor(new Color(40, 30, 30));
        g.fill(new Ellipse2D.Double(-29.4, -1, 1.6, 1.1));
        g.fill(new Ellipse2D.Double(-24.4, -1, 1.6, 1.1));
    }

    private static void text(Graphics2D g, String s, int style, double size, double x, double y) {
        AffineTransform before = g.getTransform();
        g.translate(x, y);
        g.scale(0.1, 0.1);
        g.setFont(new Font(Font.SANS_SERIF, style, 1).deriveFont((float) (size * 10)));
        g.drawString(s, 0, 0);
        g.setTransform(before);
    }

    private static BufferedImage blur(BufferedImage image, int size) {
        float[] box = new float[size * size];
        Arrays.fill(box, 1f / box.length);
        return new ConvolveOp(new Kernel(size, size, box), ConvolveOp.EDGE_NO_OP, null).filter(image, null);
    }

    private static void expose(BufferedImage image, double gain, Random random) {
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                double light = gain * (1.02 - 0.22 * x / WIDTH - 0.08 * y / HEIGHT);
                int rgb = image.getRGB(x, y);
                double noise = random.nextGaussian() * 2.2;
                int r = level(((rgb >> 16) & 255) * light + noise);
                int gr = level(((rgb >> 8) & 255) * light + noise);
                int b = level((rgb & 255) * light + noise);
                image.setRGB(x, y, r << 16 | gr << 8 | b);
            }
        }
    }

    private static int level(double v) {
        return (int) Math.max(0, Math.min(255, Math.round(v)));
    }

    private static byte[] encode(BufferedImage image, float quality) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(out)) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(quality);
            writer.setOutput(stream);
            writer.write(null, new IIOImage(image, null, null), param);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }
}
