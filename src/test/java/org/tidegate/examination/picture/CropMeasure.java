package org.tidegate.examination.picture;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.tidegate.render.OneKit;

/**
 * How many cassettes are kept by themselves, why the others are not, and how much of a card comes along: {@code CropMeasure [photos] [first cassette]
 * [folder for the crops]}, 200 photos from cassette 5000 unless said. In half of them the cassette lies beside the card (which a passport's page is
 * broader than), in half on it. Cassettes 0 to 109 served for tuning.
 */
public final class CropMeasure {

    private static final double ON_THE_CARD = 25;

    private CropMeasure() {}

    public static void main(String[] arguments) throws IOException {
        int photos = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 200;
        int first = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 5000;
        Map<String, Integer> became = new TreeMap<>();
        int withCard = 0;
        double most = 0;
        double table = 0;
        for (int i = 0; i < photos; i++) {
            double apart = i % 2 == 0 ? OneKit.BESIDE : ON_THE_CARD;
            SeenCassettes seen = SeenCassettes.in(OneKit.photo(first + i, i % 3 > 0, 0, apart));
            for (CassetteCrop crop : seen.crops()) {
                String how = i % 2 == 0 ? "beside: " : "on it: ";
                if (crop instanceof CassetteCrop.Cut cut) {
                    BufferedImage truth = seen.truth(cut);
                    double card = SeenCassettes.share(truth, OneKit.CARD);
                    most = Math.max(most, card);
                    table = Math.max(table, 1 - SeenCassettes.share(truth, OneKit.CASSETTE));
                    withCard += card > 0.005 ? 1 : 0;
                    if (card > 0.005) {
                        System.out.printf(Locale.ROOT, "cassette %d: %.1f %% of a card%n", first + i, 100 * card);
                    }
                    if (arguments.length > 2) {
                        Files.write(Path.of(arguments[2], "crop-" + (first + i) + ".png"), cut.png());
                    }
                }
                became.merge(
                        how + (crop instanceof CassetteCrop.Withheld w ? w.why().code() : "kept"), 1, Integer::sum);
            }
            if ((i + 1) % 50 == 0 || i + 1 == photos) {
                System.out.printf(
                        Locale.ROOT,
                        "%d photos: %s; kept ones with more than 0.5 %% of a card %d, at most %.1f %%; not cassette at most %.1f %%%n",
                        i + 1,
                        became,
                        withCard,
                        100 * most,
                        100 * table);
            }
        }
    }
}
