package org.tidegate.examination.picture;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.RescaleOp;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.UnaryOperator;

/** Copies of a picture as people make them. */
final class Copies {

    static final Map<String, UnaryOperator<BufferedImage>> ALL = all();

    private Copies() {}

    private static Map<String, UnaryOperator<BufferedImage>> all() {
        Map<String, UnaryOperator<BufferedImage>> all = new LinkedHashMap<>();
        all.put("quality 40", i -> recompressed(i, 0.4));
        all.put("half size", Copies::half);
        all.put("5 % off every edge", i -> crop(i, 0.05, 0.05));
        all.put("5 % off the left", i -> crop(i, 0.05, 0));
        all.put("brightness + 20 %", i -> brighter(i, 1.2));
        all.put("quarter turn", i -> Orientation.upright(i, 6));
        all.put("mirrored", i -> Orientation.upright(i, 2));
        return all;
    }

    private static BufferedImage recompressed(BufferedImage image, double quality) {
        byte[] jpeg = TestPictures.jpeg(image, quality, false);
        return new PictureDecoder(12_000_000)
                .decode(jpeg, PictureFormat.JPEG, 1)
                .image()
                .orElseThrow();
    }

    private static BufferedImage half(BufferedImage image) {
        BufferedImage out = new BufferedImage(image.getWidth() / 2, image.getHeight() / 2, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = out.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.drawImage(image, 0, 0, out.getWidth(), out.getHeight(), null);
        g.dispose();
        return out;
    }

    private static BufferedImage crop(BufferedImage image, double left, double others) {
        int w = image.getWidth();
        int h = image.getHeight();
        int x = (int) (w * left);
        int y = (int) (h * others);
        return Shrink.toLongSide(image.getSubimage(x, y, (int) (w * (1 - others)) - x, h - 2 * y), w + h);
    }

    private static BufferedImage brighter(BufferedImage image, double by) {
        return new RescaleOp((float) by, 0, null).filter(image, null);
    }
}
