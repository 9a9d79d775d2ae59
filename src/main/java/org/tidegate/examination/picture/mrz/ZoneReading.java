package org.tidegate.examination.picture.mrz;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidegate.finding.PictureFinding.Bearer;
import org.tidegate.finding.PictureFinding.Corner;

/**
 * A zone as read from a picture.
 *
 * @param text the likeliest text in which all check digits hold
 * @param sure how sure each character is, by line: the likelihood of the one given
 * @param agrees how likely the check digits were to hold before they were asked to; near 0 tells guesswork
 * @param likeness how much its characters look like the characters they are read as: about 1 for clear print, less the worse
 * @param box its corners in pixels of the working picture, clockwise from its top left as it is read
 */
public record ZoneReading(Mrz text, List<double[]> sure, double agrees, double likeness, List<Corner> box) {

    /** Less sure than this is undecided. */
    static final double DECIDED = 0.99;

    /** Guesswork agrees with the check digits once in some ten thousand times. */
    private static final double LEAST_AGREEMENT = 0.002;

    /** One that could be another one as well. */
    public record Undecided(int line, int place) {}

    /** Whether all check digits hold, and not by being made to, and nothing stands where no zone has any. */
    public boolean valid() {
        return text.valid() && text.strays() == 0 && agrees >= LEAST_AGREEMENT;
    }

    /** Characters that the picture and the check digits leave open. */
    public List<Undecided> undecided() {
        List<Undecided> out = new ArrayList<>();
        for (int line = 0; line < sure.size(); line++) {
            for (int i = 0; i < sure.get(line).length; i++) {
                if (sure.get(line)[i] < DECIDED) {
                    out.add(new Undecided(line, i));
                }
            }
        }
        return out;
    }

    /** Whom it names; empty unless the zone is valid and every character of name and birth is decided. */
    public Optional<Bearer> bearer() {
        Layout layout = Layout.of(text.format());
        boolean open = undecided().stream()
                .anyMatch(u -> layout.names().holds(u.line(), u.place())
                        || layout.birth().holds(u.line(), u.place()));
        return valid() && !open
                ? Optional.of(new Bearer(text.surname(), text.givenNames(), text.birth()))
                : Optional.empty();
    }
}
