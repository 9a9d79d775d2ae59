package org.tidegate.casework;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tidegate.booking.TestKey;
import org.tidegate.casework.Acting.Case;
import org.tidegate.finding.Findings;
import org.tidegate.finding.PictureFinding;
import org.tidegate.rules.RoleRules.Permission;
import org.tidegate.store.PersonLinks.Part;
import org.tidegate.work.MessageId;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionState;
import org.tidegate.work.User;

/**
 * Splits a message that shows several people's tests: the further test becomes a submission of its own, with the pictures of
 * the message that are for it, while the message stays one. {@link Judging#relink} brings together what was split wrongly.
 */
public final class Splitting {

    private final Acting acting;

    Splitting(Acting acting) {
        this.acting = acting;
    }

    /** Whom a picture is for. */
    public enum Place {
        /** It stays with this submission. */
        HERE,
        /** It goes to the further test. */
        THERE,
        /** It shows both. */
        BOTH
    }

    /** Why a message is split: stands in the ledger. */
    public enum Why {
        ONE_MAIL_FOR_SEVERAL,
        ONE_PICTURE_FOR_SEVERAL,
        BOTH_ATTEMPTS_IN_ONE;

        /** The stable form: {@code one-mail-for-several}. */
        public String code() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** A picture of a submission: of which of its messages, counted from 0, under which path. */
    public record Pick(int message, String path) {}

    /**
     * Gives some pictures of one message to a further test of the book. Each test keeps at least one picture.
     *
     * @param places where pictures go; those that are not named stay
     */
    public ActionResult split(User who, Ticket ticket, TestKey other, Map<Pick, Place> places, Why why) {
        return acting.on(
                ticket,
                who,
                Permission.JUDGE,
                c -> Sharing.unready(c.tx(), c.submission())
                        .or(() -> unfit(c, other))
                        .or(() -> Sharing.taken(c, other))
                        .orElseGet(() -> split(c, other, places, why)));
    }

    private Optional<ActionResult> unfit(Case c, TestKey other) {
        if (acting.reader().test(c.tx(), other).isEmpty()) {
            return refusal("no-such-test", "The book has no test " + other + ".");
        }
        if (c.assessment().test().isEmpty()) {
            return refusal("link-first", "Say first which test " + c.id() + " itself is for, then split.");
        }
        boolean same = c.assessment().test().equals(Optional.of(other));
        return same ? refusal("same-test", c.id() + " is for " + other + " itself.") : Optional.empty();
    }

    private ActionResult split(Case c, TestKey other, Map<Pick, Place> places, Why why) {
        List<Findings> messages = acting.reader().findings(c.tx(), c.submission());
        Map<Pick, Place> all = everyPhoto(messages);
        if (messages.size() < c.submission().messages().size() || !all.keySet().containsAll(places.keySet())) {
            return new ActionResult.Refused("no-such-picture", "A picture that was named is not there any more.");
        }
        all.putAll(places);
        List<Pick> given = in(all, EnumSet.of(Place.THERE, Place.BOTH));
        List<Pick> left = in(all, EnumSet.of(Place.HERE, Place.BOTH));
        if (given.isEmpty() || left.isEmpty()) {
            return new ActionResult.Refused("no-pictures", "Each of the two tests needs at least one picture.");
        }
        Set<Integer> cut = new TreeSet<>(given.stream().map(Pick::message).toList());
        if (cut.size() > 1) {
            return new ActionResult.Refused(
                    "several-messages", "These pictures came in several messages: split one message at a time.");
        }
        int message = cut.iterator().next();
        return cut(c, c.submission().messages().get(message), other, of(given, message), of(left, message), why);
    }

    private ActionResult cut(Case c, MessageId message, TestKey other, List<String> given, List<String> left, Why why) {
        keep(c, message, left);
        Part part = new Part(c.tx().personLinks().nextPart(message), message, other, given);
        c.tx().personLinks().part(part, c.who(), c.now());
        SubmissionState state = c.submission().state();
        c.move(state == SubmissionState.WAITING ? SubmissionState.HELD : state, "taken-for-splitting", List.of());
        c.record(
                "split",
                List.of(why.code()),
                Map.of(
                        "message", Long.toString(message.value()),
                        "part", part.submission().toString(),
                        "test", other.toString(),
                        "pictures", Integer.toString(given.size())));
        acting.assessAgain(c);
        Submission fresh = c.fresh();
        return new ActionResult.Done(
                fresh,
                Optional.empty(),
                part.submission() + " is for " + other + " now, with " + given.size() + " of the pictures.");
    }

    /** What stays is said to be for the test that it was matched with, so that no later look moves it. */
    private static void keep(Case c, MessageId message, List<String> left) {
        Optional<Part> own =
                c.tx().personLinks().part(c.id()).filter(p -> p.message().equals(message));
        if (own.isPresent()) {
            c.tx().personLinks().change(own.get().with(left));
            return;
        }
        c.tx().messages().leave(message, Optional.of(left));
        c.tx().personLinks().link(message, c.assessment().test().orElseThrow(), c.who(), c.now());
    }

    private static Map<Pick, Place> everyPhoto(List<Findings> messages) {
        Map<Pick, Place> all = new LinkedHashMap<>();
        for (int m = 0; m < messages.size(); m++) {
            for (PictureFinding p : messages.get(m).pictures()) {
                if (p.kind() != PictureFinding.Kind.DECORATION) {
                    all.put(new Pick(m, p.path()), Place.HERE);
                }
            }
        }
        return all;
    }

    private static List<Pick> in(Map<Pick, Place> all, Collection<Place> wanted) {
        List<Pick> picks = new ArrayList<>(all.keySet());
        picks.removeIf(p -> !wanted.contains(all.get(p)));
        return picks;
    }

    private static List<String> of(List<Pick> picks, int message) {
        return picks.stream()
                .filter(p -> p.message() == message)
                .map(Pick::path)
                .toList();
    }

    private static Optional<ActionResult> refusal(String code, String words) {
        return Optional.of(new ActionResult.Refused(code, words));
    }
}
