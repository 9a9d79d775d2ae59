package org.tidegate.examination.picture;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import org.tidegate.finding.PictureFinding.CassetteFinding;
import org.tidegate.finding.PictureFinding.DocumentFinding;
import org.tidegate.finding.PictureFinding.Legibility;
import org.tidegate.rules.Rules;

/** Runs the finders over one picture, its quadrilaterals searched once. */
final class FoundScene implements SceneReader {

    private final Rules rules;

    FoundScene(Rules rules) {
        this.rules = rules;
    }

    @Override
    public Scene read(BufferedImage image) {
        Pixels pixels = Pixels.of(image);
        List<QuadSearch.Found> quads = QuadSearch.in(pixels);
        List<CassetteFinding> cassettes = CassetteFinder.find(pixels, quads, rules.protocols(), rules.pictures());
        DocumentFinding document = DocumentFinder.find(pixels, quads, cassettes, rules.pictures());
        Legibility legibility = LegibilityMeter.measure(pixels, cassettes, rules.pictures());
        // What nobody could make out is not thereby absent.
        boolean judged = document.present() || legibility.readable();
        return new Scene(cassettes, judged ? document : DocumentFinding.notJudged(), Optional.of(legibility));
    }
}
