package org.tidegate.examination.picture;

import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/** Makes pictures smaller by averaging whole areas, so that fine texture does not turn into false detail. */
final class Shrink {

    private Shrink() {}

    /** RGB copy whose longer side is at most the given one; never enlarged. Transparency is laid on white. */
    static BufferedImage toLongSide(BufferedImage image, int longSide) {
        double scale = Math.min(1.0, (double) longSide / Math.max(image.getWidth(), image.getHeight()));
        int w = Math.max(1, (int) Math.round(image.getWidth() * scale));
        int h = Math.max(1, (int) Math.round(image.getHeight() * scale));
        return scale == 1.0 ? rgb(image, 0, image.getHeight()) : area(image, w, h);
    }

    private static BufferedImage area(BufferedImage image, int w, int h) {
        BufferedImage out = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        int[] to = ((DataBufferInt) out.getRaster().getDataBuffer()).getData();
        int[] xEdges = edges(image.getWidth(), w);
        int[] yEdges = edges(image.getHeight(), h);
        for (int y = 0; y < h; y++) {
            int rows = yEdges[y + 1] - yEdges[y];
            BufferedImage band = rgb(image, yEdges[y], rows);
            int[] from = ((DataBufferInt) band.getRaster().getDataBuffer()).getData();
            averageRow(from, image.getWidth(), rows, xEdges, to, y * w);
        }
        return out;
    }

    private static int[] edges(int from, int to) {
        int[] edges = new int[to + 1];
        for (int i = 0; i <= to; i++) {
            edges[i] = (int) ((long) i * from / to);
        }
        return edges;
    }

    private static void averageRow(int[] from, int stride, int rows, int[] xEdges, int[] to, int at) {
        for (int x = 0; x + 1 < xEdges.length; x++) {
            int r = 0;
            int g = 0;
            int b = 0;
            for (int row = 0; row < rows; row++) {
                for (int i = row * stride + xEdges[x]; i < row * stride + xEdges[x + 1]; i++) {
                    r += (from[i] >> 16) & 255;
                    g += (from[i] >> 8) & 255;
                    b += from[i] & 255;
                }
            }
            int n = rows * (xEdges[x + 1] - xEdges[x]);
            to[at + x] = ((r / n) << 16) | ((g / n) << 8) | (b / n);
        }
    }

    private static BufferedImage rgb(BufferedImage image, int top, int rows) {
        BufferedImage out = new BufferedImage(image.getWidth(), rows, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = out.createGraphics();
        g.setComposite(AlphaComposite.SrcOver);
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, out.getWidth(), rows);
        g.drawImage(image.getSubimage(0, top, image.getWidth(), rows), 0, 0, null);
        g.dispose();
        return out;
    }
}
