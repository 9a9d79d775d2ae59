package org.tidegate.casework;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tidegate.booking.TestKey;
import org.tidegate.casework.Acting.Case;
import org.tidegate.store.PersonLinks.Part;
import org.tidegate.store.StoredMessage;
import org.tidegate.store.Tx;
import org.tidegate.work.MessageId;
import org.tidegate.work.OutboxState;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;

/**
 * Which test messages are for, where one of them may be split among several. Linking one share of a message to the test of
 * another share brings the two together again: that is how a wrong split is undone.
 */
final class Sharing {

    static final Set<OutboxState> UNDER_WAY = Set.of(OutboxState.WAITING, OutboxState.ATTEMPTING);

    private Sharing() {}

    /** Why the submission's messages cannot be linked to this test; empty where they can. */
    static Optional<ActionResult> refused(Case c, TestKey test) {
        Optional<Part> part = c.tx().personLinks().part(c.id());
        List<Submission> meeting = meeting(c, part, test);
        if (meeting.isEmpty()) {
            return part.isPresent() ? taken(c, test) : Optional.empty();
        }
        return Stream.concat(Stream.of(c.submission()), meeting.stream())
                .flatMap(s -> unready(c.tx(), s).stream())
                .findFirst();
    }

    /** Why what goes by this submission cannot be cut or joined now. */
    static Optional<ActionResult> unready(Tx tx, Submission s) {
        if (!s.state().movedByAssessment() && s.state() != SubmissionState.WAITING) {
            return refusal("state", s.id() + " is " + s.state().code() + ": its pictures stay where they are.");
        }
        boolean letter = tx.outbox().of(s.id()).stream().anyMatch(l -> UNDER_WAY.contains(l.state()));
        return letter
                ? refusal("letter-waiting", "A letter about " + s.id() + " is on its way out: call it back first.")
                : Optional.empty();
    }

    /** Why a further share cannot be for this test: one test is answered by one submission. */
    static Optional<ActionResult> taken(Case c, TestKey test) {
        return c.tx().submissions().ofTest(test.toString()).stream()
                .filter(s -> !s.id().equals(c.id()) && s.state() != SubmissionState.ASIDE)
                .filter(s -> s.state() != SubmissionState.CLOSED || isRead(c.tx(), s.id()))
                .findFirst()
                .flatMap(s -> refusal(
                        "has-submission",
                        s.id() + " is for " + test + " already: link this one to another test, or answer from there."));
    }

    private static boolean isRead(Tx tx, SubmissionId id) {
        return !tx.readings().of(id).isEmpty();
    }

    private static Optional<ActionResult> refusal(String code, String words) {
        return Optional.of(new ActionResult.Refused(code, words));
    }

    /** Links all messages of the submission; {@link #refused} was asked before. */
    static void link(Case c, TestKey test) {
        Optional<Part> part = c.tx().personLinks().part(c.id());
        if (part.isPresent()) {
            linkPart(c, part.get(), test);
        } else {
            c.submission().messages().forEach(m -> linkHome(c, m, test));
        }
    }

    private static void linkHome(Case c, MessageId message, TestKey test) {
        person(c, List.of(message), test);
        for (Part joined : parts(c.tx(), message, test)) {
            dissolve(c, joined, test);
            giveBack(c.tx(), joined);
        }
    }

    private static void linkPart(Case c, Part part, TestKey test) {
        Optional<Part> sister = parts(c.tx(), part.message(), test).stream()
                .filter(p -> !p.submission().equals(part.submission()))
                .findFirst();
        if (sister.isPresent()) {
            dissolve(c, part, test);
            c.tx().personLinks().change(sister.get().with(union(sister.get().pictures(), part.pictures())));
            touch(c.tx(), sister.get().submission());
        } else if (isHomeOf(c.tx(), part.message(), test)) {
            dissolve(c, part, test);
            giveBack(c.tx(), part);
            home(c.tx(), part.message()).ifPresent(h -> touch(c.tx(), h.id()));
        } else {
            c.tx().personLinks().change(part.of(test));
            person(c, joinedTo(part, c.submission().messages()), test);
        }
    }

    /** The part is a submission no more; what came to it later goes where it goes. */
    private static void dissolve(Case c, Part part, TestKey test) {
        c.tx().submissions().find(part.submission()).ifPresent(s -> person(c, joinedTo(part, s.messages()), test));
        c.tx().personLinks().end(part.submission(), c.now());
        c.tx().submissions().dissolve(part.submission());
        c.tx().waits().drop(part.submission());
        c.tx().record(
                        "share-joined",
                        c.who(),
                        List.of(),
                        Map.of("submission", part.submission().toString(), "test", test.toString()));
    }

    /** Its pictures are the message's own submission's again. */
    private static void giveBack(Tx tx, Part part) {
        boolean last = tx.personLinks().parts(part.message()).isEmpty();
        Optional<List<String>> own =
                tx.messages().find(part.message()).flatMap(StoredMessage::shown).map(o -> union(o, part.pictures()));
        tx.messages().leave(part.message(), last ? Optional.empty() : own);
    }

    private static List<Submission> meeting(Case c, Optional<Part> part, TestKey test) {
        if (part.isEmpty()) {
            return c.submission().messages().stream()
                    .flatMap(m -> parts(c.tx(), m, test).stream())
                    .flatMap(p -> c.tx().submissions().find(p.submission()).stream())
                    .toList();
        }
        MessageId message = part.get().message();
        Stream<Submission> home = home(c.tx(), message).filter(h -> isHomeOf(c.tx(), message, test)).stream();
        Stream<Submission> sisters =
                parts(c.tx(), message, test).stream().flatMap(p -> c.tx().submissions().find(p.submission()).stream());
        return Stream.concat(home, sisters).filter(s -> !s.id().equals(c.id())).toList();
    }

    private static List<Part> parts(Tx tx, MessageId message, TestKey test) {
        return tx.personLinks().parts(message).stream()
                .filter(p -> p.test().equals(test))
                .toList();
    }

    private static Optional<Submission> home(Tx tx, MessageId message) {
        return tx.messages().find(message).flatMap(StoredMessage::submission).flatMap(tx.submissions()::find);
    }

    private static boolean isHomeOf(Tx tx, MessageId message, TestKey test) {
        return home(tx, message).flatMap(Submission::test).equals(Optional.of(test.toString()));
    }

    /** What was shown before is not what stands now: a form made from it is refused. */
    private static void touch(Tx tx, SubmissionId id) {
        tx.submissions().find(id).ifPresent(s -> tx.submissions().save(s.in(s.state())));
    }

    private static void person(Case c, Collection<MessageId> messages, TestKey test) {
        messages.forEach(m -> c.tx().personLinks().link(m, test, c.who(), c.now()));
    }

    private static List<MessageId> joinedTo(Part part, List<MessageId> messages) {
        return messages.stream().filter(m -> !m.equals(part.message())).toList();
    }

    private static List<String> union(List<String> a, List<String> b) {
        Set<String> all = new LinkedHashSet<>(a);
        all.addAll(b);
        return List.copyOf(all);
    }
}
