package org.tidegate.examination.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.tidegate.message.Attachment;

/** Small made-up pictures and the attachments that carry them. */
final class TestPictures {

    private TestPictures() {}

    /** Shapes and noise: as much to see as on a photo. */
    static BufferedImage scene(int w, int h, long seed) {
        Random random = new Random(seed);
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(new Color(random.nextInt(0xFFFFFF)));
        g.fillRect(0, 0, w, h);
        for (int i = 0; i < 60; i++) {
            g.setColor(new Color(random.nextInt(0xFFFFFF)));
            g.fillOval(random.nextInt(w), random.nextInt(h), 10 + random.nextInt(w / 3), 10 + random.nextInt(h / 3));
        }
        g.dispose();
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                int p = image.getRGB(x, y);
                int n = random.nextInt(9) - 4;
                image.setRGB(x, y, noisy(p >> 16, n) << 16 | noisy(p >> 8, n) << 8 | noisy(p, n));
            }
        }
        return image;
    }

    private static int noisy(int sample, int n) {
        return Math.max(0, Math.min(255, (sample & 255) + n));
    }

    static byte[] encode(BufferedImage image, String format) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            if (!ImageIO.write(image, format, out)) {
                throw new IllegalArgumentException("no writer for " + format);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    static byte[] jpeg(BufferedImage image, double quality, boolean progressive) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream to = new MemoryCacheImageOutputStream(out)) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality((float) quality);
            param.setProgressiveMode(progressive ? ImageWriteParam.MODE_DEFAULT : ImageWriteParam.MODE_DISABLED);
            writer.setOutput(to);
            writer.write(null, new IIOImage(image, null, null), param);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }

    static Attachment attached(String name, String type, byte[] content) {
        return new Attachment("2", Optional.of(name), type, type, Attachment.Container.MESSAGE, false, content);
    }
}
