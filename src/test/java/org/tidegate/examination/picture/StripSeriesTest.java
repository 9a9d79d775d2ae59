package org.tidegate.examination.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.commons.math3.stat.correlation.SpearmansCorrelation;
import org.junit.jupiter.api.Test;

/**
 * Real strips with a test line only, a dilution series 1:1 to 1:128 and negatives (Open_Reader, MIT, Sensors 2022, 22, 1880;
 * {@code ../shared/data/pictures/lft-open-reader-mit}): the strength falls with the dilution.
 */
class StripSeriesTest {

    /** A strip as long as the series' windows would be part of: their line, 18 pixels of 500, is then as wide as one on a cassette. */
    private static final int LENGTH = 240;

    private static final int WINDOW = 52;

    @Test
    void theStrengthFallsWithTheDilution() throws IOException {
        Path folder = OutsideData.path("pictures/lft-open-reader-mit");
        Map<String, Double> strengths = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".jpg")).toList()) {
                strength(file).ifPresent(s -> strengths.put(file.getFileName().toString(), s));
            }
        }
        String[] lined = strengths.keySet().stream()
                .filter(n -> n.startsWith("vaccinated"))
                .toArray(String[]::new);
        double[] steps = Arrays.stream(lined).mapToDouble(StripSeriesTest::step).toArray();
        double[] measured = Arrays.stream(lined).mapToDouble(strengths::get).toArray();
        double correlation = new SpearmansCorrelation().correlation(steps, measured);
        System.out.println(
                "Strength against dilution step: Spearman " + correlation + " over " + lined.length + " " + strengths);
        assertThat(lined).as("windows found of 24").hasSizeGreaterThanOrEqualTo(22);
        assertThat(strengths)
                .allSatisfy((name, strength) ->
                        assertThat(strength).as(name).isLessThan(name.startsWith("Healthy") ? weakest(measured) : 1));
        assertThat(correlation).as("" + strengths).isLessThanOrEqualTo(-0.9);
    }

    private static double weakest(double[] measured) {
        return Arrays.stream(measured).min().orElseThrow();
    }

    /** The logarithm of the dilution. */
    private static double step(String name) {
        return Math.log(Double.parseDouble(name.replaceAll("vaccinated1to(\\d+)\\..*", "$1")));
    }

    private static Optional<Double> strength(Path file) throws IOException {
        BufferedImage photo = ImageIO.read(new ByteArrayInputStream(OutsideData.bytes(file)));
        BufferedImage middle = middle(photo);
        Pixels image = Pixels.of(middle);
        return QuadSearch.in(stretched(image)).stream()
                .map(QuadSearch.Found::quad)
                .filter(q -> q.aspect() < 1.5 && q.area() > 150 * 150 && q.area() < 300 * 300)
                .max(Comparator.comparingDouble(q -> brightness(q, image)))
                .map(q -> Math.max(strength(q, image), strength(new Quad(q.b(), q.c(), q.d(), q.a()), image)));
    }

    /** The middle, three times as large. */
    private static BufferedImage middle(BufferedImage photo) {
        BufferedImage out = new BufferedImage(720, 720, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = out.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        int left = photo.getWidth() / 2 - 120;
        int top = photo.getHeight() / 2 - 120;
        g.drawImage(photo, 0, 0, 720, 720, left, top, left + 240, top + 240, null);
        g.dispose();
        return out;
    }

    /** Housing and membrane are much the same grey here, so the contrast between them is raised for finding the window. */
    private static Pixels stretched(Pixels image) {
        float[] sorted = image.luma();
        Arrays.sort(sorted);
        float low = sorted[sorted.length / 50];
        float high = sorted[sorted.length - sorted.length / 200];
        int[] out = Arrays.stream(image.rgb())
                .map(p -> Math.max(0, Math.min(255, Math.round(((p & 255) - low) / (high - low) * 255))) * 0x010101)
                .toArray();
        return new Pixels(image.width(), image.height(), out);
    }

    private static double brightness(Quad quad, Pixels image) {
        Pixels inside = Homography.toQuad(quad).rectify(image, 20, 20);
        float[] sorted = inside.luma();
        Arrays.sort(sorted);
        return sorted[300];
    }

    private static double strength(Quad window, Pixels image) {
        Pixels inner = Homography.toQuad(window.part(0.14, 0.2, 0.86, 0.8)).rectify(image, WINDOW, 24);
        int[] strip = new int[LENGTH * 24];
        for (int y = 0; y < 24; y++) {
            for (int x = 0; x < LENGTH; x++) {
                int at = Math.max(0, Math.min(WINDOW - 1, x - (LENGTH - WINDOW) / 2));
                strip[y * LENGTH + x] = inner.rgb()[y * WINDOW + at];
            }
        }
        LineProfile profile = LineProfile.of(new Pixels(LENGTH, 24, strip), 8);
        return profile.contrastAt(profile.strongest(0.4, 0.6));
    }
}
