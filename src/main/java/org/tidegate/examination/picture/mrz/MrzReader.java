package org.tidegate.examination.picture.mrz;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tidegate.examination.picture.FinePicture;
import org.tidegate.examination.picture.Luma;
import org.tidegate.examination.picture.ZoneReader;
import org.tidegate.finding.PictureFinding.Corner;

/** Finds machine-readable zones anywhere on a picture, either way up, and reads the one that is surest. */
public final class MrzReader implements ZoneReader {

    private static final int ALIGNED = 2;

    /** Below this share of characters that look like what they are read as it is no zone. */
    private static final double ALIKE = 0.75;

    /** The same where the check digits do not speak for it. */
    private static final double ALIKE_UNCHECKED = 0.79;

    /** From more characters where no zone has any on it is ordinary print. */
    private static final int MOST_STRAYS = 6;

    private final ZoneAligner aligner = new ZoneAligner(GlyphSheet.fonts());

    @Override
    public Optional<Zone> read(FinePicture picture) {
        return find(picture).map(r -> new Zone(r.box(), r.text().lines(), r.bearer()));
    }

    /** Empty where nothing on the picture looks like a zone. */
    public Optional<ZoneReading> find(FinePicture picture) {
        List<ZoneReading> all = new ArrayList<>();
        for (Strand place : ZonePlaces.in(Luma.of(picture.working()))) {
            at(picture, place).ifPresent(all::add);
            if (!all.isEmpty() && all.get(all.size() - 1).valid()) {
                break;
            }
        }
        return all.stream().max(Comparator.comparing(ZoneReading::valid).thenComparingDouble(ZoneReading::likeness));
    }

    private Optional<ZoneReading> at(FinePicture picture, Strand place) {
        Patch patch = Patch.of(picture, place);
        Ink ink = Ink.of(patch.luma());
        return ZoneGrid.of(RowFinder.in(ink)).flatMap(zone -> read(patch, ink, zone));
    }

    private Optional<ZoneReading> read(Patch patch, Ink ink, ZoneGrid rough) {
        CellWindow[] upright = cells(ink, rough);
        CellWindow[] turned = turned(upright);
        ZoneCells up = ZoneCells.of(upright);
        ZoneCells down = ZoneCells.of(turned);
        boolean isTurned = down.fit() > up.fit();
        ZoneCells seen = isTurned ? down : up;
        ZoneGrid zone = rough;
        CellWindow[] now = upright;
        for (int round = 0; round < ALIGNED; round++) {
            int[] glyphs = isTurned ? reversed(seen.best()) : seen.best();
            zone = aligner.aligned(zone, now, seen.font(), glyphs, isTurned);
            now = cells(ink, zone);
            seen = ZoneCells.of(isTurned ? turned(now) : now);
        }
        List<Corner> outline = new ArrayList<>(
                zone.outline().stream().map(c -> patch.onPicture(c.x(), c.y())).toList());
        if (isTurned) {
            Collections.rotate(outline, 2);
        }
        return best(seen, zone.rows().size(), zone.length(), outline);
    }

    private static Optional<ZoneReading> best(ZoneCells seen, int lines, int length, List<Corner> box) {
        return MrzFormat.of(lines, length).stream()
                .map(format -> reading(seen, format, box))
                .max(Comparator.comparing(ZoneReading::valid).thenComparingDouble(ZoneReading::likeness))
                .filter(MrzReader::isZone);
    }

    private static boolean isZone(ZoneReading r) {
        return r.likeness() >= (r.valid() ? ALIKE : ALIKE_UNCHECKED) && r.text().strays() <= MOST_STRAYS;
    }

    private static ZoneReading reading(ZoneCells seen, MrzFormat format, List<Corner> box) {
        double[][] allowed =
                Alphabet.of(format).stream().flatMap(Arrays::stream).toArray(double[][]::new);
        CheckedDecoder.Decoded decoded = new CheckedDecoder(format).decode(seen.likely(allowed));
        int[] looks = seen.best();
        List<String> lines = new ArrayList<>();
        List<double[]> sure = new ArrayList<>();
        int alike = 0;
        for (int line = 0; line < format.lines(); line++) {
            StringBuilder text = new StringBuilder();
            double[] chances = new double[format.length()];
            for (int i = 0; i < chances.length; i++) {
                int p = line * chances.length + i;
                int glyph = likeliest(decoded.likely()[p]);
                chances[i] = decoded.likely()[p][glyph];
                alike += glyph == looks[p] ? 1 : 0;
                text.append(GlyphSheet.GLYPHS.charAt(glyph));
            }
            lines.add(text.toString());
            sure.add(chances);
        }
        return new ZoneReading(
                new Mrz(format, lines), sure, decoded.agrees(), (double) alike / looks.length, List.copyOf(box));
    }

    private static int likeliest(double[] chances) {
        int best = 0;
        for (int g = 1; g < chances.length; g++) {
            best = chances[g] > chances[best] ? g : best;
        }
        return best;
    }

    private static CellWindow[] cells(Ink ink, ZoneGrid zone) {
        int n = zone.length();
        CellWindow[] out = new CellWindow[zone.rows().size() * n];
        for (int i = 0; i < out.length; i++) {
            out[i] = zone.cell(ink, Math.floorDiv(i, n), i % n);
        }
        return out;
    }

    private static CellWindow[] turned(CellWindow[] cells) {
        CellWindow[] out = new CellWindow[cells.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = cells[out.length - 1 - i].turned();
        }
        return out;
    }

    private static int[] reversed(int[] glyphs) {
        int[] out = new int[glyphs.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = glyphs[out.length - 1 - i];
        }
        return out;
    }
}
