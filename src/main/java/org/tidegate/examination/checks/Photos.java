package org.tidegate.examination.checks;

import java.util.ArrayList;
import java.util.List;
import org.tidegate.finding.Findings;
import org.tidegate.finding.PictureFinding;
import org.tidegate.finding.PictureFinding.Decoding;
import org.tidegate.finding.PictureFinding.Kind;

/**
 * Which of a message's pictures matter for what.
 *
 * @param all every picture that could be a photo, by index in {@link Findings#pictures()}
 * @param decoded those of which pixels could be seen
 * @param cassette those that show the cassette, or might: where no picture shows one, those in which nobody could tell
 */
public record Photos(List<Integer> all, List<Integer> decoded, List<Integer> cassette) {

    public static Photos of(Findings findings) {
        List<Integer> all = new ArrayList<>();
        List<Integer> decoded = new ArrayList<>();
        List<Integer> shown = new ArrayList<>();
        List<Integer> untold = new ArrayList<>();
        for (int i = 0; i < findings.pictures().size(); i++) {
            PictureFinding p = findings.pictures().get(i);
            if (p.kind() == Kind.DECORATION) {
                continue;
            }
            boolean seen = p.readable() == Decoding.DECODED || p.readable() == Decoding.PARTIAL;
            all.add(i);
            if (seen) {
                decoded.add(i);
            }
            if (!p.cassettes().isEmpty()) {
                shown.add(i);
            } else if (!seen || !legible(p)) {
                untold.add(i);
            }
        }
        return new Photos(List.copyOf(all), List.copyOf(decoded), List.copyOf(shown.isEmpty() ? untold : shown));
    }

    static boolean legible(PictureFinding p) {
        return p.legibility().map(PictureFinding.Legibility::readable).orElse(false);
    }
}
