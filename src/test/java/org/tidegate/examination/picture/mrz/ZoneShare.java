package org.tidegate.examination.picture.mrz;

import java.util.Locale;
import java.util.Random;
import org.tidegate.examination.picture.PictureFile;
import org.tidegate.render.ZonePhoto;
import org.tidegate.rules.PictureRules;
import org.tidegate.rules.Rules;
import org.tidegate.rules.RulesReader;
import org.tidegate.rules.RulesResult;

/** How many rendered documents are read without a fault: {@code ZoneShare [documents for each height]} prints it by capital height. */
final class ZoneShare {

    private static final double[] HEIGHTS = {10, 12, 14, 16, 20, 24, 32};

    private static final Rules RULES = ((RulesResult.Loaded) RulesReader.bundled()).rules();

    private ZoneShare() {}

    /**
     * @param right every character as printed, all check digits valid
     * @param wrong a bearer was named whose name or birth the document does not bear
     */
    record Counts(int all, int found, int right, int named, int wrong) {

        double share() {
            return (double) right / all;
        }
    }

    public static void main(String[] args) {
        int each = args.length > 0 ? Integer.parseInt(args[0]) : 40;
        for (double height : HEIGHTS) {
            Counts c = of(height, each, 20260504);
            System.out.printf(
                    Locale.ROOT,
                    "%4.0f px: %d documents, found %d, right %d (%.1f %%), named %d, wrongly %d%n",
                    height,
                    c.all(),
                    c.found(),
                    c.right(),
                    100 * c.share(),
                    c.named(),
                    c.wrong());
        }
    }

    static Counts of(double capital, int documents, long seed) {
        PictureRules rules = RULES.pictures();
        MrzReader reader = new MrzReader();
        Random random = new Random(seed + (long) capital);
        int found = 0;
        int right = 0;
        int named = 0;
        int wrong = 0;
        for (int i = 0; i < documents; i++) {
            ZonePhoto photo = ZonePhoto.of(capital, i % 2 == 0, random);
            ZoneReading zone =
                    PictureFile.open(photo.jpeg(), rules).flatMap(reader::find).orElse(null);
            if (zone == null) {
                continue;
            }
            Mrz truth = Mrz.of(photo.lines()).orElseThrow();
            found++;
            right += zone.valid() && zone.text().equals(truth) ? 1 : 0;
            named += zone.bearer().isPresent() ? 1 : 0;
            wrong += zone.bearer()
                            .filter(b -> !b.surname().equals(truth.surname())
                                    || !b.givenNames().equals(truth.givenNames())
                                    || !b.birth().equals(truth.birth()))
                            .isPresent()
                    ? 1
                    : 0;
        }
        return new Counts(documents, found, right, named, wrong);
    }
}
