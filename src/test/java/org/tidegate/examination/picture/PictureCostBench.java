package org.tidegate.examination.picture;

import com.sun.management.OperatingSystemMXBean;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import javax.imageio.ImageIO;
import org.tidegate.examination.picture.mrz.MrzReader;
import org.tidegate.finding.DeliveryFacts;
import org.tidegate.finding.PictureFinding.Fingerprints;

/**
 * CPU time of examining one 12-megapixel JPEG, in a program that has run for a while, and of one look-up among a million fingerprints:
 * {@code java -Xmx512m -cp target/classes:target/test-classes:… org.tidegate.examination.picture.PictureCostBench [photo.jpg]}. The photo is
 * enlarged to 12 megapixels; without one a drawn scene serves.
 */
public final class PictureCostBench {

    private static final int WARM_UP = 25;
    private static final int ROUNDS = 25;
    private static final int MILLION = 1_000_000;

    private PictureCostBench() {}

    public static void main(String[] arguments) throws IOException {
        BufferedImage view =
                arguments.length > 0 ? ImageIO.read(Path.of(arguments[0]).toFile()) : TestPictures.scene(1008, 756, 1);
        examine(TestPictures.jpeg(enlarged(view, 4032, 3024), 0.9, false));
        lookUp();
    }

    private static void examine(byte[] jpeg) {
        PictureExaminer examiner = new PictureExaminer(LiveRules.read(), OutsideDecoder.NONE, new MrzReader());
        DeliveryFacts facts = new DeliveryFacts(Optional.empty(), new byte[16], List.of());
        long[] times = new long[WARM_UP + ROUNDS];
        for (int i = 0; i < times.length; i++) {
            long before = cpu();
            examiner.examine(List.of(TestPictures.attached("photo.jpg", "image/jpeg", jpeg)), facts);
            times[i] = cpu() - before;
        }
        times = Arrays.copyOfRange(times, WARM_UP, times.length);
        print("examine a 12 MP JPEG of " + jpeg.length / 1024 + " KiB", times);
    }

    private static void lookUp() {
        Random random = new Random(1);
        SeenBefore seen = new SeenBefore(LiveRules.read().pictures().sameWithin());
        long before = heap();
        for (int i = 0; i < MILLION; i++) {
            seen.add(i, drawn(random, 0));
        }
        System.out.printf(Locale.ROOT, "%.0f bytes of heap a fingerprint%n", (double) (heap() - before) / MILLION);
        long[] times = new long[1_000];
        for (int i = 0; i < times.length; i++) {
            Fingerprints asked = drawn(random, 24);
            long start = thread();
            seen.find(asked);
            times[i] = thread() - start;
        }
        print("look up among " + MILLION + "", times);
    }

    /** @param views turned and cropped views in all */
    private static Fingerprints drawn(Random random, int views) {
        List<String> others = random.ints(views).mapToObj(i -> hash(random)).toList();
        return new Fingerprints(
                HexFormat.of().toHexDigits(random.nextLong()),
                Optional.of(hash(random)),
                Optional.of(hash(random)),
                others.subList(0, Math.min(7, views)),
                others.subList(Math.min(7, views), views),
                List.of());
    }

    private static String hash(Random random) {
        return HashWords.hex(random.longs(HashWords.WORDS).toArray());
    }

    private static void print(String what, long[] nanos) {
        Arrays.sort(nanos);
        System.out.printf(
                Locale.ROOT,
                "%s: median %.1f ms, 95th percentile %.1f ms%n",
                what,
                nanos[nanos.length / 2] / 1e6,
                nanos[nanos.length * 95 / 100] / 1e6);
    }

    private static BufferedImage enlarged(BufferedImage image, int w, int h) {
        BufferedImage out = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = out.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        g.drawImage(image, 0, 0, w, h, null);
        g.dispose();
        return out;
    }

    /** Of the whole process: finders may use several threads. */
    private static long cpu() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }

    private static long heap() {
        System.gc();
        return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
    }

    private static long thread() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
