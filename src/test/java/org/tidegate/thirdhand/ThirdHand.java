package org.tidegate.thirdhand;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.imageio.ImageIO;
import org.tidegate.render.JpegFile;

/**
 * Photos of cassettes and identity documents, with the truth about them, from a seed. Its author knew neither the finder that is
 * measured on them nor the other painters.
 */
public final class ThirdHand {

    /**
     * A picture and what it shows.
     *
     * @param image as a reader of the JPEG sees it, 1200 to 4000 pixels on the long side
     * @param jpeg the file's bytes
     * @param truth what it shows
     */
    public record Picture(BufferedImage image, byte[] jpeg, Truth truth) {}

    private ThirdHand() {}

    /**
     * Paints one picture; the same seed gives the same one on the same Java and fonts. Takes up to a gigabyte of memory and some
     * seconds.
     *
     * @param seed any number
     * @return the picture and the truth about it
     */
    public static Picture picture(long seed) {
        Draws draws = Draws.ofPicture(seed);
        Scene scene = new Scene(draws);
        Frame light = scene.light();
        Phone phone = new Phone(draws, scene.view().longSide());
        byte[] jpeg = JpegFile.write(phone.shoot(light, seed).image(), phone.quality());
        Truth truth = scene.truth(phone.story());
        try {
            return new Picture(Objects.requireNonNull(ImageIO.read(new ByteArrayInputStream(jpeg))), jpeg, truth);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
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
        List<String> table = new ArrayList<>(List.of(Truth.HEADING));
        for (long seed = first; seed < first + count; seed++) {
            Picture picture = picture(seed);
            String file = Story.format("third-%05d.jpg", seed);
            Files.write(folder.resolve(file), picture.jpeg());
            table.add(picture.truth().row(seed, file));
        }
        Files.write(folder.resolve("truth.csv"), table);
    }
}
