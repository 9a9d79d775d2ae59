package org.tidegate.otherhand;

import java.util.Locale;

/**
 * What a picture shows.
 *
 * @param cassettes how many cassettes lie whole in the picture, 0 to 3
 * @param lined whether they have a test line (all or none of one picture)
 * @param testContrast 1 minus the reflectance of the darkest place of the test line over that of the membrane beside it, in
 *     linear light, in the channel where the dye absorbs most, before any glare; 0 without a test line
 * @param controlContrast the same of the control line; 0 without a cassette
 * @param document whether an identity document is in view
 */
public record Truth(int cassettes, boolean lined, double testContrast, double controlContrast, boolean document) {

    static final String HEADING = "seed,file,cassettes,lined,test contrast,document";

    static Truth drawn(Draw draw) {
        double lot = draw.between(0, 1);
        int cassettes = lot < 0.12 ? 0 : lot < 0.24 ? 2 : lot < 0.28 ? 3 : 1;
        boolean lined = draw.chance(0.25) && cassettes > 0;
        double control = draw.between(0.35, 0.95);
        double test = draw.between(0.10, 0.90);
        return new Truth(cassettes, lined, lined ? test : 0, cassettes > 0 ? control : 0, draw.chance(0.60));
    }

    String row(long seed, String file) {
        return String.format(Locale.ROOT, "%d,%s,%d,%b,%.3f,%b", seed, file, cassettes, lined, testContrast, document);
    }
}
