package org.tidegate.examination.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Locale;
import org.tidegate.examination.picture.LineMeasure.Told;

/**
 * Stated confidence against how often a line was really there, in tenths, with the expected calibration error (mean distance of the two, weighted by
 * how many; Naeini et al. 2015, from memory) and the Brier score (mean square of confidence minus truth; Brier 1950, from memory).
 *
 * @param said mean confidence of each tenth
 * @param there share of each tenth that had a line
 */
record ReliabilityDiagram(int[] many, double[] said, double[] there, double brier) {

    private static final int TENTHS = 10;
    private static final int SIDE = 640;
    private static final int EDGE = 80;

    static ReliabilityDiagram of(List<Told> told) {
        int[] many = new int[TENTHS];
        double[] said = new double[TENTHS];
        double[] there = new double[TENTHS];
        double brier = 0;
        for (Told t : told) {
            int tenth = (int) Math.min(TENTHS - 1, t.confidence() * TENTHS);
            double truth = t.strength() > 0 ? 1 : 0;
            many[tenth]++;
            said[tenth] += t.confidence();
            there[tenth] += truth;
            brier += (t.confidence() - truth) * (t.confidence() - truth) / told.size();
        }
        for (int i = 0; i < TENTHS; i++) {
            said[i] /= Math.max(1, many[i]);
            there[i] /= Math.max(1, many[i]);
        }
        return new ReliabilityDiagram(many, said, there, brier);
    }

    double calibrationError() {
        double all = 0;
        double error = 0;
        for (int i = 0; i < TENTHS; i++) {
            all += many[i];
            error += many[i] * Math.abs(said[i] - there[i]);
        }
        return error / Math.max(1, all);
    }

    String text() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < TENTHS; i++) {
            text.append(String.format(Locale.ROOT, "said %.3f, was there %.3f of %d%n", said[i], there[i], many[i]));
        }
        return text + summary() + System.lineSeparator();
    }

    private String summary() {
        return String.format(Locale.ROOT, "calibration error %.3f, Brier score %.3f", calibrationError(), brier);
    }

    BufferedImage image() {
        BufferedImage image = new BufferedImage(SIDE, SIDE, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, SIDE, SIDE);
        g.setColor(new Color(0x55, 0x5B, 0x66));
        g.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 15));
        g.drawString("Stated confidence that there is a line", EDGE + 90, SIDE - 25);
        g.drawString("Share that had one", 12, EDGE - 40);
        g.drawString(summary(), EDGE + 60, EDGE - 15);
        axes(g);
        for (int i = 0; i < TENTHS; i++) {
            tenth(g, i);
        }
        g.dispose();
        return image;
    }

    private static void axes(Graphics2D g) {
        for (int i = 0; i <= TENTHS; i += 2) {
            String mark = String.format(Locale.ROOT, "%.1f", i / (double) TENTHS);
            g.drawString(mark, x(i / (double) TENTHS) - 10, SIDE - EDGE + 22);
            g.drawString(mark, EDGE - 36, y(i / (double) TENTHS) + 5);
        }
        g.drawRect(x(0), y(1), x(1) - x(0), y(0) - y(1));
        g.setStroke(new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, new float[] {6, 6}, 0));
        g.drawLine(x(0), y(0), x(1), y(1));
    }

    private void tenth(Graphics2D g, int i) {
        if (many[i] == 0) {
            return;
        }
        int radius = (int) Math.round(4 + 2 * Math.log10(many[i]) * 2);
        g.setColor(new Color(0x1F, 0x5F, 0xA8));
        g.fillOval(x(said[i]) - radius, y(there[i]) - radius, 2 * radius, 2 * radius);
        g.drawString(Integer.toString(many[i]), x(said[i]) + radius + 3, y(there[i]) + 5);
    }

    private static int x(double share) {
        return (int) Math.round(EDGE + share * (SIDE - 2 * EDGE));
    }

    private static int y(double share) {
        return (int) Math.round(SIDE - EDGE - share * (SIDE - 2 * EDGE));
    }
}
