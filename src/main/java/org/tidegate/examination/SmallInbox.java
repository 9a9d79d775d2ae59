package org.tidegate.examination;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.tidegate.booking.TestKey;
import org.tidegate.examination.Assessment.Disposition;
import org.tidegate.examination.checks.Photos;
import org.tidegate.examination.checks.Standing;
import org.tidegate.examination.linkage.LinkageResult;
import org.tidegate.examination.picture.SeenBefore;
import org.tidegate.examination.picture.SeenWriting;
import org.tidegate.examination.timing.Outage;
import org.tidegate.finding.Findings;
import org.tidegate.finding.PictureFinding;
import org.tidegate.finding.PictureFinding.Fingerprints;
import org.tidegate.rules.Rules;

/** A handful of messages assessed in the order given, each seeing the earlier ones: what {@code examine} does without a store. */
public final class SmallInbox {

    private final Assessor assessor;
    private final OpenTests tests;
    private final List<Outage> outages;
    private final Set<String> quarantinedLots;
    private final List<Entry> entries = new ArrayList<>();
    private final SeenBefore seen;
    private final SeenWriting writing;

    private record Entry(List<Findings> messages, Optional<TestKey> test, boolean ready) {}

    public SmallInbox(Rules rules, OpenTests tests, List<Outage> outages, Set<String> quarantinedLots) {
        this.assessor = new Assessor(rules);
        this.seen = new SeenBefore(rules.pictures().sameWithin());
        this.writing = new SeenWriting(rules.pictures().sameWritingWithin());
        this.tests = tests;
        this.outages = List.copyOf(outages);
        this.quarantinedLots = Set.copyOf(quarantinedLots);
    }

    /** How a message's submission stands after it, and what that was made of. */
    public record Taken(AssessmentInput input, Assessment assessment) {}

    /** Takes one more message in and tells how its submission stands after it. */
    public Assessment add(Findings message) {
        return take(message).assessment();
    }

    /** The same with what the assessment was made of. */
    public Taken take(Findings message) {
        LinkageResult alone = assessor.link(message, tests);
        OptionalInt place = Joining.place(message, alone, candidates());
        List<Findings> messages = new ArrayList<>();
        place.ifPresent(i -> messages.addAll(entries.get(i).messages()));
        messages.add(message);
        boolean ready = place.isPresent() && entries.get(place.getAsInt()).ready();
        Standing standing = new Standing(
                ready,
                before(messages, alone, place, this::carriers),
                before(messages, alone, place, this::alike),
                quarantinedLots,
                Optional.empty());
        AssessmentInput input = new AssessmentInput(messages, tests, standing, outages, Optional.empty());
        Assessment assessment = assessor.assess(input);
        keep(place, new Entry(messages, assessment.test(), assessment.disposition() == Disposition.TO_READ));
        return new Taken(input, assessment);
    }

    private List<Joining.Candidate> candidates() {
        return entries.stream()
                .map(e -> new Joining.Candidate(e.messages(), e.test()))
                .toList();
    }

    private void keep(OptionalInt place, Entry entry) {
        if (place.isPresent()) {
            entries.set(place.getAsInt(), entry);
        } else {
            entries.add(entry);
        }
        int owner = place.orElse(entries.size() - 1);
        Findings last = entry.messages().get(entry.messages().size() - 1);
        last.pictures().stream().flatMap(p -> p.fingerprints().stream()).forEach(f -> {
            seen.add(owner, f);
            f.written().forEach(w -> writing.add(owner, w));
        });
    }

    private Set<String> before(
            List<Findings> messages,
            LinkageResult alone,
            OptionalInt place,
            Function<Fingerprints, Stream<Long>> owners) {
        Set<String> keys = new TreeSet<>();
        for (int m = 0; m < messages.size(); m++) {
            for (int i : Photos.of(messages.get(m)).cassette()) {
                PictureFinding picture = messages.get(m).pictures().get(i);
                if (seenElsewhere(picture.fingerprints().stream().flatMap(owners), alone.test(), place)) {
                    keys.add(Standing.pictureKey(m, picture.path()));
                }
            }
        }
        return keys;
    }

    private Stream<Long> carriers(Fingerprints prints) {
        return seen.find(prints).stream().map(SeenBefore.Seen::owner);
    }

    private Stream<Long> alike(Fingerprints prints) {
        return prints.written().stream().flatMap(w -> writing.find(w).stream());
    }

    /** Seen in a submission that is neither this one nor of the same booked person. */
    private boolean seenElsewhere(Stream<Long> owners, Optional<TestKey> test, OptionalInt place) {
        return owners.map(Long::intValue)
                .filter(owner -> place.isEmpty() || place.getAsInt() != owner)
                .anyMatch(owner -> test.isEmpty()
                        || !entries.get(owner).test().map(TestKey::ref).equals(test.map(TestKey::ref)));
    }
}
