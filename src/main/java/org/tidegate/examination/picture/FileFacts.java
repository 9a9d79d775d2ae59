package org.tidegate.examination.picture;

import java.util.List;
import java.util.Optional;
import org.tidegate.finding.CaptureClue;

/**
 * What the records beside the pixels say. A bad value is left out: it is absent, never a fact.
 *
 * @param orientation EXIF 2.32 tag 0x0112; 1 where absent
 * @param software program that wrote the file
 * @param capture every time in the file, none from its name
 */
record FileFacts(
        int orientation,
        Optional<String> make,
        Optional<String> model,
        Optional<String> software,
        List<CaptureClue> capture) {}
