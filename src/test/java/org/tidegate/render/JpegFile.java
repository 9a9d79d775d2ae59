package org.tidegate.render;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** Writes JPEG files without EXIF. */
public final class JpegFile {

    private static final float STEP = 0.07f;
    private static final float LEAST = 0.3f;

    private JpegFile() {}

    /** The best quality, from the given one downwards, that stays within so many bytes. */
    static byte[] within(BufferedImage image, double quality, int most) {
        float q = (float) quality;
        byte[] file = write(image, q);
        while (file.length > most && q > LEAST) {
            q -= STEP;
            file = write(image, q);
        }
        if (file.length > most) {
            throw new IllegalArgumentException(
                    "picture of " + image.getWidth() + " pixels does not fit " + most + " bytes");
        }
        return file;
    }

    /** The picture as it looks after compression. */
    static BufferedImage reread(BufferedImage image, double quality) {
        try {
            return ImageIO.read(new ByteArrayInputStream(write(image, quality)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** @param quality 0–1 */
    public static byte[] write(BufferedImage image, double quality) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality((float) quality);
            writer.write(null, new IIOImage(image, null, null), param);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
