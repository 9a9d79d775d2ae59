package org.tidegate.otherhand;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import javax.imageio.ImageIO;
import org.tidegate.render.JpegFile;

/**
 * Photos of cassettes and identity documents on tables, with the truth about them, from a seed. Written without knowledge of
 * the finder that is measured on them and of the painter it was tuned on.
 */
public final class OtherHand {

    /**
     * A picture and what it shows.
     *
     * @param image as a reader of the JPEG sees it
     * @param jpeg the file's bytes
     * @param truth what it shows
     */
    public record Picture(BufferedImage image, byte[] jpeg, Truth truth) {}

    private OtherHand() {}

    /**
     * Paints one picture; the same seed gives the same one on the same Java and fonts.
     *
     * @param seed any number
     * @return the picture and the truth about it
     */
    public static Picture picture(long seed) {
        Draw draw = new Draw(seed);
        Truth truth = Truth.drawn(draw);
        BufferedImage raw = new Phone(new Scene(truth, draw), draw).shoot();
        byte[] jpeg = JpegFile.write(raw, draw.between(0.45, 0.95));
        try {
            return new Picture(Objects.requireNonNull(ImageIO.read(new ByteArrayInputStream(jpeg))), jpeg, truth);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /**
     * Writes pictures and {@code truth.csv}.
     *
     * @param args folder, first seed, count
     * @throws IOException when the folder cannot be written
     */
    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        long first = Long.parseLong(args[1]);
        int count = Integer.parseInt(args[2]);
        StringBuilder table = new StringBuilder(Truth.HEADING).append('\n');
        for (long seed = first; seed < first + count; seed++) {
            Picture picture = picture(seed);
            String file = String.format(Locale.ROOT, "hand-%05d.jpg", seed);
            Files.write(folder.resolve(file), picture.jpeg());
            table.append(picture.truth().row(seed, file)).append('\n');
        }
        Files.writeString(folder.resolve("truth.csv"), table);
    }
}
