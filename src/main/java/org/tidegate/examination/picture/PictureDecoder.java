package org.tidegate.examination.picture;

import com.twelvemonkeys.imageio.stream.ByteArrayImageInputStream;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.event.IIOReadWarningListener;
import javax.imageio.stream.ImageInputStream;
import org.jspecify.annotations.Nullable;
import org.tidegate.finding.PictureFinding.Decoding;

/**
 * Decodes a picture within a bound on pixels. The header is read first; a picture over the limit is subsampled while reading, one far over it
 * is not read at all. What can be decoded of a truncated file is.
 */
final class PictureDecoder {

    /** Longer side, in pixels, that every measurement works on. */
    static final int LONG_SIDE = 1600;

    /** Whose readers are used, best first. */
    private static final List<String> READERS = List.of("com.twelvemonkeys.", "com.sun.");

    /** Other warnings (a colour profile that is odd, a tag of the wrong type) leave the pixels whole. */
    private static final Pattern CUT_OFF = Pattern.compile("(?i)premature|truncat|corrupt|\\beof\\b|end of");

    private final long maxPixels;
    private final SourceLimit limit;

    PictureDecoder(long maxPixels) {
        this.maxPixels = maxPixels;
        this.limit = new SourceLimit(maxPixels);
    }

    /**
     * @param orientation EXIF 2.32 tag 0x0112, 1–8
     */
    Decoded decode(byte[] content, PictureFormat format, int orientation) {
        return reader(format)
                .map(reader -> decode(reader, content, format, orientation))
                .orElseGet(() -> Decoded.without(Decoding.UNSUPPORTED, 0, 0));
    }

    /** One reader a format, whatever else lies on the class path: other TIFF readers trust lengths that a damaged file states. */
    private static Optional<ImageReader> reader(PictureFormat format) {
        List<ImageReader> known = new ArrayList<>();
        ImageIO.getImageReadersByFormatName(format.reader()).forEachRemaining(known::add);
        return READERS.stream()
                .flatMap(maker ->
                        known.stream().filter(r -> r.getClass().getName().startsWith(maker)))
                .findFirst();
    }

    private Decoded decode(ImageReader reader, byte[] content, PictureFormat format, int orientation) {
        try (ImageInputStream in = new ByteArrayImageInputStream(content)) {
            reader.setInput(in, true, true);
            int w = reader.getWidth(0);
            int h = reader.getHeight(0);
            return limit.allows(content, format, w, h)
                    ? read(reader, w, h, orientation)
                    : without(Decoding.OVER_LIMIT, w, h, orientation);
        } catch (IOException | RuntimeException e) {
            // Decoders throw whatever comes to hand on damaged files (negative sizes, missing tables, class casts).
            return Decoded.without(Decoding.BROKEN, 0, 0);
        } finally {
            reader.dispose();
        }
    }

    private static Decoded without(Decoding state, int w, int h, int orientation) {
        boolean turned = orientation >= 5;
        return Decoded.without(state, turned ? h : w, turned ? w : h);
    }

    private Decoded read(ImageReader reader, int w, int h, int orientation) throws IOException {
        Read read = pixels(reader, w, h, step(w, h));
        if (read.image() == null) {
            return without(Decoding.BROKEN, w, h, orientation);
        }
        BufferedImage small = Shrink.toLongSide(read.image(), LONG_SIDE);
        Decoding state = read.whole() ? Decoding.DECODED : Decoding.PARTIAL;
        FinePicture picture = new FinePicture(Orientation.upright(small, orientation), read.image(), orientation);
        boolean turned = orientation >= 5;
        return new Decoded(Optional.of(picture), turned ? h : w, turned ? w : h, state);
    }

    /** Every step-th pixel is kept: as fine as the limit and twice the working size allow, so that averaging removes aliasing. */
    private int step(int w, int h) {
        int step = Math.max(1, Math.max(w, h) / (2 * LONG_SIDE + LONG_SIDE / 2));
        while ((long) (w / step) * (h / step) > maxPixels) {
            step++;
        }
        return step;
    }

    private record Read(@Nullable BufferedImage image, boolean whole) {}

    private static Read pixels(ImageReader reader, int w, int h, int step) throws IOException {
        List<String> warnings = new ArrayList<>();
        IIOReadWarningListener listener = (source, warning) -> warnings.add(warning);
        reader.addIIOReadWarningListener(listener);
        ImageReadParam param = reader.getDefaultReadParam();
        param.setSourceSubsampling(step, step, 0, 0);
        BufferedImage into = destination(reader, (w + step - 1) / step, (h + step - 1) / step);
        if (into != null) {
            param.setDestination(into);
        }
        try {
            BufferedImage image = reader.read(0, param);
            return new Read(
                    image,
                    warnings.stream().noneMatch(said -> CUT_OFF.matcher(said).find()));
        } catch (IOException | RuntimeException e) {
            return new Read(into != null && hasContent(into) ? into : null, false);
        }
    }

    /** An image that outlives a reader which stops half-way; null where the reader must choose its own. */
    private static @Nullable BufferedImage destination(ImageReader reader, int w, int h) throws IOException {
        var types = reader.getImageTypes(0);
        return types.hasNext() ? types.next().createBufferedImage(w, h) : null;
    }

    /** Whether any pixel was written before the reader stopped. */
    private static boolean hasContent(BufferedImage image) {
        Raster raster = image.getRaster();
        Rectangle r = raster.getBounds();
        int[] row = new int[r.width * raster.getNumBands()];
        for (int y = 0; y < r.height; y++) {
            for (int sample : raster.getPixels(0, y, r.width, 1, row)) {
                if (sample != 0) {
                    return true;
                }
            }
        }
        return false;
    }
}
