package org.tidegate.examination.picture;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import org.tidegate.finding.PictureFinding.CassetteFinding;
import org.tidegate.finding.PictureFinding.DocumentFinding;
import org.tidegate.finding.PictureFinding.Legibility;
import org.tidegate.rules.PictureRules;
import org.tidegate.rules.Protocol;

/** Looks for four-cornered things once and reads cassettes, documents and legibility from them. */
final class SceneFinder implements SceneReader {

    private final List<Protocol> kits;
    private final PictureRules rules;

    /** @param kits whose cassettes may be in view */
    SceneFinder(List<Protocol> kits, PictureRules rules) {
        this.kits = List.copyOf(kits);
        this.rules = rules;
    }

    @Override
    public Scene read(BufferedImage image) {
        Pixels pixels = Pixels.of(image);
        List<QuadSearch.Found> quads = QuadSearch.in(pixels);
        List<CassetteFinding> cassettes = CassetteFinder.find(pixels, quads, kits, rules);
        Legibility legibility = LegibilityMeter.measure(pixels, cassettes, rules);
        DocumentFinding document = DocumentFinder.find(pixels, quads, cassettes, rules);
        boolean judged = document.present() || legibility.readable();
        return new Scene(cassettes, judged ? document : DocumentFinding.notJudged(), Optional.of(legibility));
    }
}
