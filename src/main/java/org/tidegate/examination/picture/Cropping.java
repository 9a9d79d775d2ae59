package org.tidegate.examination.picture;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidegate.examination.picture.CassetteCrop.Why;
import org.tidegate.examination.picture.CropShape.Place;
import org.tidegate.finding.PictureFinding;
import org.tidegate.finding.PictureFinding.CassetteFinding;
import org.tidegate.finding.PictureFinding.Corner;
import org.tidegate.finding.PictureFinding.DocumentFinding;
import org.tidegate.rules.Protocol;
import org.tidegate.rules.Protocol.CassetteShape;

/**
 * Cuts the cassettes of one message out of its pictures. What is cut lies within the cassette's outline, a little drawn in and with rounded
 * corners, so that nothing of what lay beside it comes along.
 */
public final class Cropping {

    /** Cassettes of one message that are kept at most. */
    private static final int MOST = 12;

    /** Pixels of a crop's longer and shorter side at most. */
    static final int LONGEST = 640;

    static final int BROADEST = 320;

    /** Pixels of a cassette's length, at the size that everything is measured on, below which nobody could read it. */
    private static final int SHORTEST = 100;

    /** Probability from which something is surely a cassette: print of a document has been taken for one at less. */
    private static final double SURE = 0.95;

    /** Least and most by which an outline may be longer than its kit's, as factors: perspective does no more, and what is longer holds something else. */
    private static final double[] LONGER = {0.6, 1.35};

    /** How far the outline is drawn in, as a share of the breadth: an outline is found to about a pixel, and its rim is table already. */
    private static final double DRAWN_IN = 0.02;

    /** Share of a cassette that may seem to lie in a document: outlines of two things that touch are not exact. */
    private static final double TOUCHES = 0.01;

    private static final int GRID = 40;

    private final List<Protocol> kits;
    private final List<CassetteCrop> crops = new ArrayList<>();

    Cropping(List<Protocol> kits) {
        this.kits = List.copyOf(kits);
    }

    List<CassetteCrop> all() {
        return List.copyOf(crops);
    }

    /**
     * @param picture which of the message's pictures, from 0
     * @param working its pixels, upright, at whatever size
     * @return what is written on those that are cut out, see {@link Written}
     */
    List<float[]> add(int picture, PictureFinding finding, BufferedImage working) {
        List<float[]> written = new ArrayList<>();
        for (int i = 0; i < finding.cassettes().size(); i++) {
            CassetteFinding cassette = finding.cassettes().get(i);
            Optional<Why> why = crops.size() < MOST ? against(finding, cassette) : Optional.of(Why.TOO_MANY);
            crops.add(
                    why.isPresent()
                            ? new CassetteCrop.Withheld(picture, i, why.get())
                            : cut(picture, i, finding, working, written));
        }
        return written;
    }

    /** What speaks against keeping a picture's cassette by itself before one looks closely; empty where nothing does. */
    public static Optional<Why> against(PictureFinding picture, CassetteFinding cassette) {
        DocumentFinding document = picture.document();
        if (!document.judged()) {
            return Optional.of(Why.DOCUMENT_UNJUDGED);
        }
        Quad inside = inside(outline(cassette.box()));
        boolean covers = document.present()
                && (document.box().isEmpty()
                        || Stream.of(document.box(), document.zone())
                                .anyMatch(b -> !b.isEmpty() && share(inside, outline(b)) > TOUCHES));
        if (covers) {
            return Optional.of(Why.COVERS_DOCUMENT);
        }
        if (cassette.confidence() < SURE) {
            return Optional.of(Why.UNSURE);
        }
        double scale = Math.min(1, (double) PictureDecoder.LONG_SIDE / Math.max(picture.width(), picture.height()));
        return inside.length() * scale < SHORTEST ? Optional.of(Why.TOO_SMALL) : Optional.empty();
    }

    static Quad outline(List<Corner> box) {
        return new Quad(box.get(0), box.get(1), box.get(2), box.get(3));
    }

    static Quad inside(Quad outline) {
        double along = DRAWN_IN / outline.aspect();
        return outline.part(along, DRAWN_IN, 1 - along, 1 - DRAWN_IN);
    }

    /** Share of the first that lies in the second. */
    private static double share(Quad of, Quad in) {
        Homography map = Homography.toQuad(of);
        int met = 0;
        for (int i = 0; i < GRID * GRID; i++) {
            met += in.contains(map.at((i % GRID + 0.5) / GRID, (Math.floorDiv(i, GRID) + 0.5) / GRID)) ? 1 : 0;
        }
        return (double) met / (GRID * GRID);
    }

    private CassetteCrop cut(
            int picture, int cassette, PictureFinding finding, BufferedImage working, List<float[]> written) {
        CassetteFinding found = finding.cassettes().get(cassette);
        Quad outline = outline(found.box()).scaled((double) working.getWidth() / finding.width());
        Quad inside = inside(outline);
        int width = (int) Math.min(LONGEST, Math.round(inside.length()));
        int height = (int) Math.max(1, Math.min(BROADEST, Math.round(width / inside.aspect())));
        BufferedImage whole = CropPixels.straight(inside, working, width, height);
        Pixels pixels = Pixels.of(whole);
        Optional<Rectangle> clean = CleanRim.of(pixels);
        if (clean.isEmpty() || !shape(found).map(kit -> fits(outline, kit)).orElse(true)) {
            return new CassetteCrop.Withheld(picture, cassette, Why.OUTLINE_UNSURE);
        }
        shape(found).flatMap(kit -> Written.on(pixels, kit)).ifPresent(written::add);
        Rectangle r = clean.get();
        CropShape shape = new CropShape(found.kit(), r.width, r.height, places(found, outline, width, r));
        byte[] png = CropPixels.png(CropPixels.rounded(whole.getSubimage(r.x, r.y, r.width, r.height)));
        return new CassetteCrop.Cut(picture, cassette, finding.path(), shape, png);
    }

    private static boolean fits(Quad outline, CassetteShape kit) {
        double longer = outline.aspect() / kit.aspect();
        return longer >= LONGER[0] && longer <= LONGER[1];
    }

    private Optional<CassetteShape> shape(CassetteFinding found) {
        return kits.stream()
                .filter(kit -> found.kit().filter(kit.kit()::equals).isPresent())
                .map(Protocol::cassette)
                .findFirst();
    }

    /** @param width of the outline laid straight, of which the clean part was cut out */
    private List<Place> places(CassetteFinding found, Quad outline, int width, Rectangle clean) {
        double along = DRAWN_IN / outline.aspect();
        return shape(found)
                .map(c -> c.lines().stream()
                        .map(l -> {
                            double at = c.windowFrom() + l.at() * (c.windowTo() - c.windowFrom());
                            double x = (at - along) / (1 - 2 * along) * width;
                            return new Place(l.name(), (x - clean.x) / clean.width);
                        })
                        .toList())
                .orElse(List.of());
    }
}
