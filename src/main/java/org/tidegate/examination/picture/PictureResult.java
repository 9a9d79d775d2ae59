package org.tidegate.examination.picture;

import java.util.List;
import org.tidegate.finding.FileProblem;
import org.tidegate.finding.PictureFinding;

/**
 * What the files of one message show.
 *
 * @param pictures every picture in the order of the attachments, logos included
 * @param problems files that could not be taken at face value
 * @param crops what became of every cassette that was found, in the order of the pictures
 */
public record PictureResult(List<PictureFinding> pictures, List<FileProblem> problems, List<CassetteCrop> crops) {

    public PictureResult {
        pictures = List.copyOf(pictures);
        problems = List.copyOf(problems);
        crops = List.copyOf(crops);
    }
}
