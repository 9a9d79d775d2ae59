package org.tidegate.examination.picture;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import org.tidegate.examination.picture.mrz.MrzReader;
import org.tidegate.finding.PictureFinding;
import org.tidegate.finding.PictureFinding.CassetteFinding;
import org.tidegate.render.OneKit;
import org.tidegate.rules.Rules;

/** One drawn photo, looked into as a message's picture is, with the truth of what its crops show. */
record SeenCassettes(OneKit photo, PictureFinding finding, List<CassetteCrop> crops, List<float[]> written) {

    private static final Rules RULES = LiveRules.read();
    private static final SceneFinder SCENES = new SceneFinder(RULES.protocols(), RULES.pictures(), new MrzReader());

    static SeenCassettes in(OneKit photo) {
        BufferedImage image = photo.image();
        SceneReader.Scene scene = SCENES.read(FinePicture.of(image));
        PictureFinding finding = new PictureFinding(
                "2",
                Optional.empty(),
                "image/jpeg",
                image.getWidth(),
                image.getHeight(),
                PictureFinding.Kind.PHOTO,
                PictureFinding.Decoding.DECODED,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                scene.legibility(),
                scene.cassettes(),
                scene.document(),
                Optional.empty(),
                List.of());
        Cropping cropping = new Cropping(RULES.protocols());
        List<float[]> written = cropping.add(0, finding, image);
        return new SeenCassettes(photo, finding, cropping.all(), written);
    }

    /** What a crop shows, cut out of the truth. */
    BufferedImage truth(CassetteCrop.Cut cut) {
        CassetteFinding found = finding.cassettes().get(cut.cassette());
        Quad inside = Cropping.inside(Cropping.outline(found.box()));
        int width = (int) Math.min(Cropping.LONGEST, Math.round(inside.length()));
        int height = (int) Math.round(width / inside.aspect());
        Rectangle clean = CleanRim.of(Pixels.of(CropPixels.straight(inside, photo.image(), width, height)))
                .orElseThrow();
        BufferedImage truth = CropPixels.straight(inside, photo.truth(), width, height);
        return CropPixels.rounded(truth.getSubimage(clean.x, clean.y, clean.width, clean.height));
    }

    /** Share of what is seen that is of a colour, more or less. */
    static double share(BufferedImage image, int rgb) {
        int seen = 0;
        int met = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int p = image.getRGB(x, y);
                if (p >>> 24 != 0) {
                    seen++;
                    met += near(p, rgb, 16) && near(p, rgb, 8) && near(p, rgb, 0) ? 1 : 0;
                }
            }
        }
        return seen == 0 ? 0 : (double) met / seen;
    }

    private static boolean near(int a, int b, int shift) {
        return Math.abs(((a >> shift) & 255) - ((b >> shift) & 255)) < 100;
    }
}
