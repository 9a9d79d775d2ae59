package org.tidegate.examination.picture;

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
    private final ZoneReader zones;

    /** @param kits whose cassettes may be in view */
    SceneFinder(List<Protocol> kits, PictureRules rules, ZoneReader zones) {
        this.kits = List.copyOf(kits);
        this.rules = rules;
        this.zones = zones;
    }

    @Override
    public Scene read(FinePicture picture) {
        Pixels pixels = Pixels.of(picture.working());
        List<QuadSearch.Found> quads = QuadSearch.in(pixels);
        List<CassetteFinding> cassettes = CassetteFinder.find(pixels, quads, kits, rules);
        Legibility legibility = LegibilityMeter.measure(pixels, cassettes, rules);
        DocumentFinding document = withZone(DocumentFinder.find(pixels, quads, cassettes, rules), picture);
        boolean judged = document.present() || legibility.readable();
        return new Scene(cassettes, judged ? document : DocumentFinding.notJudged(), Optional.of(legibility));
    }

    /** A zone is an identity document, whether its edges were found or not. */
    private DocumentFinding withZone(DocumentFinding card, FinePicture picture) {
        return zones.read(picture)
                .map(zone -> new DocumentFinding(
                        true,
                        true,
                        1,
                        card.present() ? card.box() : zone.box(),
                        card.portrait(),
                        zone.box(),
                        zone.lines(),
                        zone.bearer()))
                .orElse(card);
    }
}
