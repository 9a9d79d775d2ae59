package org.tidegate.casework;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.tidegate.examination.Assessment;
import org.tidegate.examination.Assessor;
import org.tidegate.examination.Joining;
import org.tidegate.examination.OpenTests;
import org.tidegate.examination.linkage.LinkageResult;
import org.tidegate.finding.Findings;
import org.tidegate.store.PersonLinks.Part;
import org.tidegate.store.Tx;
import org.tidegate.work.MessageId;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;

/**
 * Joins messages to submissions in the order of taking. A message that is finished late goes to its place, and every later
 * one that could see it is placed again after it, so that the outcome is the same in whatever order messages were finished.
 */
final class Fold {

    private final Tx tx;
    private final Assessor assessor;
    private final OpenTests tests;
    private final FoldView view;
    private final Ties ties;
    private final Verdicts verdicts;
    private final Map<SubmissionId, Draft> drafts = new TreeMap<>();
    private final TreeSet<MessageId> toPlace = new TreeSet<>();

    Fold(Tx tx, Assessor assessor, OpenTests tests, FoldView view, Ties ties, Verdicts verdicts) {
        this.tx = tx;
        this.assessor = assessor;
        this.tests = tests;
        this.view = view;
        this.ties = ties;
        this.verdicts = verdicts;
    }

    /** Places the message, and after it all that depends on it. @return every submission that may have changed */
    Collection<Draft> from(MessageId start) {
        take(start);
        while (!toPlace.isEmpty()) {
            MessageId next = toPlace.pollFirst();
            view.findings(next).ifPresent(f -> place(next, f));
        }
        return drafts.values();
    }

    /** Takes a message, and all later ones of its submission, out of their places. */
    private void take(MessageId id) {
        parts(id);
        Optional<Draft> home = home(id);
        if (home.isEmpty()) {
            toPlace.add(id);
        } else if (!staysPut(home.get())) {
            List<MessageId> leaving = List.copyOf(home.get().messages().tailSet(id));
            home.get().messages().removeAll(leaving);
            toPlace.addAll(leaving);
        }
    }

    /** A person acted on it, or a message of it is forgotten. */
    private boolean staysPut(Draft draft) {
        return draft.pinned() || view.findings(draft.members()).isEmpty();
    }

    private void place(MessageId id, Findings findings) {
        LinkageResult alone = alone(id, findings);
        takeAll(ties.watchersAfter(id, id));
        ties.record(id, findings, alone.test());
        List<Draft> candidates = candidates(id);
        OptionalInt found = Joining.place(
                findings, alone, candidates.stream().map(this::candidate).toList());
        Draft draft = found.isPresent() ? candidates.get(found.getAsInt()) : fresh(id);
        draft.messages().add(id);
        takeAll(draft.after(id));
        parts(id).forEach(part -> takeAll(part.after(id)));
        draft.messages().forEach(member -> takeAll(ties.watchersAfter(member, id)));
    }

    /** What the message matches by itself; a person's word stands over it. */
    private LinkageResult alone(MessageId id, Findings findings) {
        LinkageResult found = assessor.link(findings, tests);
        return view.linked(id)
                .filter(t -> tests.find(t).isPresent())
                .map(t -> new LinkageResult(LinkageResult.Outcome.MATCH, Optional.of(t), 1, found.candidates()))
                .orElse(found);
    }

    private void takeAll(Set<MessageId> later) {
        later.forEach(this::take);
    }

    /** Submissions that the message might join, as they stood before it. */
    private List<Draft> candidates(MessageId id) {
        Map<SubmissionId, Draft> found = new TreeMap<>();
        for (MessageId before : ties.joinableBefore(id)) {
            Stream.concat(home(before).stream(), parts(before).stream())
                    .filter(Draft::joinable)
                    .forEach(d -> found.put(d.id(), d));
        }
        found.values().forEach(d -> takeAll(d.after(id)));
        return new ArrayList<>(found.values());
    }

    /** The thread of a split message tells nobody whose of its tests an answer is about. */
    private Joining.Candidate candidate(Draft draft) {
        Members members = draft.members();
        boolean split = members.ids().stream().anyMatch(m -> !view.parts(m).isEmpty());
        List<Findings> thread = split ? List.of() : view.findings(members).orElse(List.of());
        return new Joining.Candidate(thread, verdicts.of(members).flatMap(Assessment::test));
    }

    /** The submissions of the further tests that the message is split for. */
    private List<Draft> parts(MessageId id) {
        return view.parts(id).stream().map(this::draft).toList();
    }

    private Draft draft(Part part) {
        Draft known = drafts.get(part.submission());
        if (known == null) {
            known = tx.submissions()
                    .find(part.submission())
                    .map(s -> Draft.of(s, Optional.of(part)))
                    .orElseGet(() -> Draft.of(part));
            drafts.put(known.id(), known);
        }
        return known;
    }

    private Optional<Draft> home(MessageId id) {
        Optional<Draft> inFold = drafts.values().stream()
                .filter(d -> d.messages().contains(id) && !d.shares(id))
                .findFirst();
        if (inFold.isPresent() || toPlace.contains(id)) {
            return inFold;
        }
        return tx.messages()
                .find(id)
                .flatMap(m -> m.submission())
                .filter(s -> !drafts.containsKey(s))
                .flatMap(s -> tx.submissions().find(s))
                .map(this::remember);
    }

    private Draft remember(Submission stored) {
        Draft draft = Draft.of(stored, tx.personLinks().part(stored.id()));
        drafts.put(draft.id(), draft);
        return draft;
    }

    /** The submission that this message starts; where it started one before, that one again. */
    private Draft fresh(MessageId id) {
        SubmissionId own = SubmissionId.startedBy(id);
        Draft known = drafts.get(own);
        if (known == null) {
            known = tx.submissions()
                    .find(own)
                    .map(s -> Draft.of(s, Optional.empty()))
                    .orElseGet(() -> Draft.startedBy(id));
            drafts.put(own, known);
        }
        return known;
    }
}
