package org.tidegate.finding;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * A difference constraint {@code lo ≤ later − earlier ≤ hi} (Dechter, Meiri, Pearl 1991) with its evidence.
 *
 * @param lo empty: unbounded below
 * @param hi empty: unbounded above
 * @param clock who made it; its level is the clue's level of trust
 * @param place where in the evidence: a header line, an EXIF tag, a book field
 * @param words one plain English sentence part, times with their zone
 * @param leansOn assumptions without which the clue says nothing
 */
public record Clue(
        Event earlier,
        Event later,
        Optional<Duration> lo,
        Optional<Duration> hi,
        Clock clock,
        String place,
        String words,
        List<Assumption> leansOn) {}
