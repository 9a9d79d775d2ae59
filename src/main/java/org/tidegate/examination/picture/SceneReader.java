package org.tidegate.examination.picture;

import java.util.List;
import java.util.Optional;
import org.tidegate.finding.PictureFinding.CassetteFinding;
import org.tidegate.finding.PictureFinding.Corner;
import org.tidegate.finding.PictureFinding.DocumentFinding;
import org.tidegate.finding.PictureFinding.Legibility;

/** Finds what is in view on one upright picture. */
interface SceneReader {

    /** @param legibility empty where it was not measured */
    record Scene(List<CassetteFinding> cassettes, DocumentFinding document, Optional<Legibility> legibility) {

        static Scene unseen() {
            return new Scene(List.of(), DocumentFinding.notJudged(), Optional.empty());
        }

        /** With all places in pixels of a picture so many times finer. */
        Scene scaled(double factor) {
            return new Scene(
                    cassettes.stream()
                            .map(c -> new CassetteFinding(scaled(c.box(), factor), c.kit(), c.confidence(), c.lines()))
                            .toList(),
                    new DocumentFinding(
                            document.present(),
                            document.judged(),
                            document.confidence(),
                            scaled(document.box(), factor),
                            scaled(document.portrait(), factor),
                            scaled(document.zone(), factor),
                            document.mrz(),
                            document.bearer()),
                    legibility);
        }

        private static List<Corner> scaled(List<Corner> box, double factor) {
            return box.stream()
                    .map(c -> new Corner((c.x() + 0.5) * factor - 0.5, (c.y() + 0.5) * factor - 0.5))
                    .toList();
        }
    }

    Scene read(FinePicture picture);
}
