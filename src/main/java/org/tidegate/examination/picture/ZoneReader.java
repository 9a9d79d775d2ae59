package org.tidegate.examination.picture;

import java.util.List;
import java.util.Optional;
import org.tidegate.finding.PictureFinding.Bearer;
import org.tidegate.finding.PictureFinding.Corner;

/** Reads the machine-readable zone of an identity document in view. */
public interface ZoneReader {

    /** Looks for none. */
    ZoneReader NONE = picture -> Optional.empty();

    /**
     * @param box its corners in pixels of the working picture, clockwise from its top left as the document is read
     * @param lines as read; characters that could be another one as well are the likelier of the two
     * @param bearer whom it names; empty where anything that matters for that is not sure
     */
    record Zone(List<Corner> box, List<String> lines, Optional<Bearer> bearer) {

        public Zone {
            box = List.copyOf(box);
            lines = List.copyOf(lines);
        }
    }

    Optional<Zone> read(FinePicture picture);
}
