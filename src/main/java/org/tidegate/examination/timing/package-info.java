/**
 * Time verdicts that prove themselves (DESIGN 6).
 *
 * <p><b>The model.</b> Everything that happened is an event: the test, the photo, the sending, each mail server's taking over, each mail
 * service's signing (DKIM {@code t=}, where the signature holds and covers what we read), our own server's taking over, and the zero of
 * the phone's clock. Every clue bounds the distance of two events, {@code lo ≤ later − earlier ≤ hi}; all clues form a simple temporal
 * network (Dechter, Meiri, Pearl 1991), which {@link org.tidegate.examination.timing.Network} keeps minimal. A phone's displays are exact
 * distances from its clock's zero, and where that zero lies is one more clue ({@code clock-right}): so a wrong clock, and with it a
 * missing zone, cancels out by itself. Clues are believed in order of {@link org.tidegate.examination.timing.Rank}, twice: at their word
 * and with every tolerance. A clue that misfits is stretched by at most its tolerance; one that no tolerance reconciles is set aside, and
 * its negative cycle named. Clues of one rank that contradict each other split the belief into one for each maximal consistent subset;
 * only what all prove is concluded, and each way out is told apart. A stamp without a zone gives no time; one of {@code -0000} gives the
 * time, but not the zone. A photo without a zone is judged in one network for each zone in use; where it takes its zone from the Date of
 * the same phone, an {@code outside} must hold in all zones that a journey between photo and mail leaves open; where the clinic's zone
 * falls and another puts the photo into the window, the zone is said to be open and no clock is blamed. What is stated in words, in the
 * message or on the cassette as the reader transcribed it, comes last.
 *
 * <p><b>Proof obligations.</b> {@code photo inside}: two paths at word, photo − test ≥ {@code read_from} − grace and ≤ {@code read_until}
 * + grace. {@code photo outside}: one path with every tolerance that misses the widened window, in every remaining zone. {@code sent
 * inside}: a path at word, arrived − test ≤ the limit, on recorded clocks or with the stated time. {@code sent outside}: a path with every
 * tolerance, arrived − test &gt; the limit, and no earlier stamp that puts the sending before it (else late in transit). Every derivation
 * is such a path, sentence by sentence, its conclusion last, and adds up; what follows from the order of things is told at one go. {@link
 * org.tidegate.examination.timing.VerdictText} tells it in short, {@link org.tidegate.examination.timing.TimeDrawing} draws it, {@link
 * org.tidegate.examination.timing.Enclosure} is the page for a participant who disputes it. An {@code inside} claims the window up to
 * grace and what clocks may be off without being wrong.
 *
 * <p><b>What a verdict is worth.</b> No verdict contradicts the truth unless an assumption that it lists was violated; with assumptions,
 * set-aside and stretched clues fixed, removing a clue never creates or reverses a decision.
 *
 * <p><b>Known limits.</b> Whoever can write EXIF, Date and the Received lines of his own servers can forge a consistent story inside what
 * our own server's line and the clinic's record leave open: a photo can be dated into the window, never past its arrival. A mail service
 * of his own can sign whatever time it likes: a signature leans on {@code server-honest} as a hop does, and a photo taken of an older
 * photo has the younger one's time. A phone that is slow cannot be told from a message that waited: nothing is concluded then unless a GPS
 * stamp decides. A phone whose clock is wrong and that did not send its photo itself is judged by {@code clock-right}, which the verdict
 * lists. A colleague's phone of the same model passes for the same phone. Where the clinic's zone is the one that fell, no outside is
 * concluded for a photo without a zone: a wrong clock explains it as well as a journey.
 */
@NullMarked
package org.tidegate.examination.timing;

import org.jspecify.annotations.NullMarked;
