package org.tidegate.examination.picture.mrz;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.apache.commons.text.similarity.LevenshteinDistance;
import org.tidegate.examination.picture.FinePicture;
import org.tidegate.examination.picture.PictureFile;
import org.tidegate.finding.PictureFinding.Corner;
import org.tidegate.render.ZonePhoto;
import org.tidegate.rules.Rules;
import org.tidegate.rules.RulesReader;
import org.tidegate.rules.RulesResult;

/**
 * Reads the same rendered zones with our recogniser and with an installed {@code tesseract}, which gets each zone found, cut out and laid
 * straight by ours, and only the letters that may occur: {@code TesseractShare [capital height] [documents]}.
 */
final class TesseractShare {

    private static final Rules RULES = ((RulesResult.Loaded) RulesReader.bundled()).rules();
    private static final double MARGIN = 0.02;

    private int zones;
    private int characters;
    private int oursRight;
    private int oursWrong;
    private int theirsRight;
    private int theirsWrong;

    private TesseractShare() {}

    public static void main(String[] args) throws IOException, InterruptedException {
        double capital = args.length > 0 ? Double.parseDouble(args[0]) : 20;
        int documents = args.length > 1 ? Integer.parseInt(args[1]) : 100;
        TesseractShare share = new TesseractShare();
        Random random = new Random(9303);
        for (int i = 0; i < documents; i++) {
            share.add(ZonePhoto.of(capital, i % 2 == 0, random));
        }
        System.out.printf(
                Locale.ROOT,
                "%.0f px, %d of %d zones found: ours right %d, %.2f %% of characters wrong; tesseract right %d, %.2f %%%n",
                capital,
                share.zones,
                documents,
                share.oursRight,
                100.0 * share.oursWrong / share.characters,
                share.theirsRight,
                100.0 * share.theirsWrong / share.characters);
    }

    private void add(ZonePhoto photo) throws IOException, InterruptedException {
        FinePicture picture = PictureFile.open(photo.jpeg(), RULES.pictures()).orElseThrow();
        Optional<ZoneReading> ours = new MrzReader().find(picture);
        if (ours.isEmpty()) {
            return;
        }
        String truth = String.join("\n", photo.lines());
        String our = String.join("\n", ours.get().text().lines());
        String their = tesseract(straight(picture.working(), ours.get().box()));
        zones++;
        characters += truth.length();
        oursRight += our.equals(truth) ? 1 : 0;
        theirsRight += their.equals(truth) ? 1 : 0;
        oursWrong += LevenshteinDistance.getDefaultInstance().apply(our, truth);
        theirsWrong += LevenshteinDistance.getDefaultInstance().apply(their, truth);
    }

    /** The zone with a margin, twice as large: letters of 40 pixels are what the engine reads best (its own advice, from memory). */
    private static BufferedImage straight(BufferedImage image, List<Corner> box) {
        Corner a = box.get(0);
        Corner b = box.get(1);
        Corner c = box.get(2);
        Corner d = box.get(3);
        int w = (int) (2 * Math.hypot(b.x() - a.x(), b.y() - a.y()));
        int h = (int) (2 * Math.hypot(d.x() - a.x(), d.y() - a.y()));
        int margin = (int) (MARGIN * w);
        BufferedImage out = new BufferedImage(w + 2 * margin, h + 2 * margin, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < out.getHeight(); y++) {
            for (int x = 0; x < out.getWidth(); x++) {
                double u = (double) (x - margin) / w;
                double v = (double) (y - margin) / h;
                double px = (1 - v) * (a.x() + u * (b.x() - a.x())) + v * (d.x() + u * (c.x() - d.x()));
                double py = (1 - v) * (a.y() + u * (b.y() - a.y())) + v * (d.y() + u * (c.y() - d.y()));
                out.setRGB(x, y, sample(image, px, py));
            }
        }
        return out;
    }

    private static int sample(BufferedImage image, double x, double y) {
        int left = (int) Math.max(0, Math.min(image.getWidth() - 2, Math.floor(x)));
        int top = (int) Math.max(0, Math.min(image.getHeight() - 2, Math.floor(y)));
        double u = Math.max(0, Math.min(1, x - left));
        double v = Math.max(0, Math.min(1, y - top));
        double upper = grey(image, left, top) * (1 - u) + grey(image, left + 1, top) * u;
        double lower = grey(image, left, top + 1) * (1 - u) + grey(image, left + 1, top + 1) * u;
        return (int) Math.round(upper * (1 - v) + lower * v) * 0x010101;
    }

    private static int grey(BufferedImage image, int x, int y) {
        return (image.getRGB(x, y) >> 8) & 255;
    }

    private static String tesseract(BufferedImage zone) throws IOException, InterruptedException {
        Path file = Files.createTempFile("zone", ".png");
        try {
            ImageIO.write(zone, "png", file.toFile());
            ProcessBuilder builder = new ProcessBuilder(
                    "tesseract",
                    file.toString(),
                    "stdout",
                    "--psm",
                    "6",
                    "-c",
                    "tessedit_char_whitelist=ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789<");
            builder.environment().put("OMP_THREAD_LIMIT", "1");
            Process process =
                    builder.redirectError(ProcessBuilder.Redirect.DISCARD).start();
            String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            process.waitFor(60, TimeUnit.SECONDS);
            return said.replace(" ", "").replaceAll("\n+", "\n").strip();
        } finally {
            Files.delete(file);
        }
    }
}
