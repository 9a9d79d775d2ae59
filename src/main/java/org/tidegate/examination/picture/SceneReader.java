package org.tidegate.examination.picture;

import java.util.List;
import java.util.Optional;
import org.tidegate.finding.PictureFinding.CassetteFinding;
import org.tidegate.finding.PictureFinding.DocumentFinding;
import org.tidegate.finding.PictureFinding.Legibility;

/** Finds what is in view on one upright picture. */
interface SceneReader {

    /** @param legibility empty where it was not measured */
    record Scene(List<CassetteFinding> cassettes, DocumentFinding document, Optional<Legibility> legibility) {

        static Scene unseen() {
            return new Scene(List.of(), DocumentFinding.notJudged(), Optional.empty());
        }
    }

    Scene read(FinePicture picture);
}
