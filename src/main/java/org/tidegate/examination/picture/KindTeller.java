package org.tidegate.examination.picture;

import java.awt.image.BufferedImage;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.tidegate.finding.PictureFinding.Kind;
import org.tidegate.message.Attachment;

/** Tells photos from logos, trackers, screenshots and pages. In doubt it is a photo: a person can still put it aside. */
final class KindTeller {

    private static final Pattern SCREENSHOT_NAME =
            Pattern.compile("(?i)^(screen[ _-]?shot|screen[ _-]?capture|screencap|bildschirmfoto|captura|zrzut).*");

    /** Smaller than this on its shorter side, nothing can be read from a cassette. */
    private static final int TINY_SIDE = 64;

    private static final int SMALL_INLINE_SIDE = 320;
    private static final double BANNER_ASPECT = 5;

    /** A photo of even a plain table has more of 4,096 colours, because of its noise and shading. */
    private static final int DRAWN_COLOURS = 40;

    /** Share of neighbours of exactly the same colour: drawn surfaces, not sensor noise. */
    private static final double DRAWN_FLAT = 0.6;

    private KindTeller() {}

    static Kind tell(Attachment file, PictureFormat format, FileFacts facts, Decoded decoded) {
        if (facts.make().isPresent() || facts.model().isPresent()) {
            return Kind.PHOTO;
        }
        if (isDecoration(file, decoded)) {
            return Kind.DECORATION;
        }
        boolean drawn = decoded.image().map(KindTeller::isDrawn).orElse(false);
        boolean screen = format == PictureFormat.PNG && drawn && isScreen(decoded);
        if (screen || isNamedScreenshot(file.fileName())) {
            return Kind.SCREENSHOT;
        }
        return drawn && isDocument(file) ? Kind.PAGE : Kind.PHOTO;
    }

    private static boolean isDocument(Attachment file) {
        return file.container() == Attachment.Container.PDF || file.container() == Attachment.Container.OFFICE;
    }

    private static boolean isNamedScreenshot(Optional<String> name) {
        return name.map(n -> SCREENSHOT_NAME.matcher(n.toLowerCase(Locale.ROOT)).matches())
                .orElse(false);
    }

    private static boolean isDecoration(Attachment file, Decoded decoded) {
        int w = decoded.width();
        int h = decoded.height();
        if (w == 0 || h == 0) {
            return false;
        }
        int shorter = Math.min(w, h);
        int longer = Math.max(w, h);
        boolean fewColours =
                decoded.image().map(i -> colours(i) < DRAWN_COLOURS).orElse(false);
        return shorter < TINY_SIDE
                || (double) longer / shorter > BANNER_ASPECT
                || (file.inline() && longer <= SMALL_INLINE_SIDE)
                || (fewColours && longer < 2 * SMALL_INLINE_SIDE)
                || (fewColours && file.inline());
    }

    /** Screens of phones are between 3:2 and 9:22 and wider than 320 points. */
    private static boolean isScreen(Decoded decoded) {
        int shorter = Math.min(decoded.width(), decoded.height());
        double aspect = (double) Math.max(decoded.width(), decoded.height()) / shorter;
        return shorter >= 320 && aspect >= 1.5 && aspect <= 2.45;
    }

    private static int colours(BufferedImage image) {
        Set<Integer> seen = new HashSet<>();
        int step = Math.max(1, Math.min(image.getWidth(), image.getHeight()) / 96);
        for (int y = 0; y < image.getHeight(); y += step) {
            for (int x = 0; x < image.getWidth(); x += step) {
                seen.add(image.getRGB(x, y) & 0xF0F0F0);
            }
        }
        return seen.size();
    }

    private static boolean isDrawn(BufferedImage image) {
        int step = Math.max(1, Math.min(image.getWidth(), image.getHeight()) / 200);
        int same = 0;
        int all = 0;
        for (int y = 0; y < image.getHeight(); y += step) {
            for (int x = 1; x < image.getWidth(); x += step) {
                same += image.getRGB(x, y) == image.getRGB(x - 1, y) ? 1 : 0;
                all++;
            }
        }
        return same > DRAWN_FLAT * all;
    }
}
