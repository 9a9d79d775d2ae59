package org.tidegate.casework;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.tidegate.examination.Assessment;
import org.tidegate.examination.Assessment.Disposition;
import org.tidegate.examination.AssessmentInput;
import org.tidegate.examination.Assessor;
import org.tidegate.examination.OpenTests;
import org.tidegate.examination.checks.Standing;
import org.tidegate.examination.checks.Transcription;
import org.tidegate.examination.timing.Outage;
import org.tidegate.finding.Findings;
import org.tidegate.finding.PictureFinding;
import org.tidegate.store.Readings;
import org.tidegate.store.Tx;
import org.tidegate.work.MessageId;

/** Assesses lists of messages as submissions: the same list gives the same assessment, whoever asks and when. */
final class Verdicts {

    private final Assessor assessor;
    private final OpenTests tests;
    private final FoldView view;
    private final Ties ties;
    private final SeenPictures pictures;
    private final List<Outage> outages;
    private final Set<String> quarantinedLots;
    private final Readings readings;
    private final Map<Members, Optional<Assessment>> known = new HashMap<>();

    Verdicts(Tx tx, Assessor assessor, OpenTests tests, FoldView view, Ties ties, SeenPictures pictures) {
        this.assessor = assessor;
        this.tests = tests;
        this.view = view;
        this.ties = ties;
        this.pictures = pictures;
        this.outages = tx.registers().outages().stream()
                .map(o -> new Outage(o.from(), o.until()))
                .toList();
        this.readings = tx.readings();
        this.quarantinedLots = tx.registers().quarantinedLots();
    }

    /** Empty where a message is forgotten. The standing before the last message is that of the list without it. */
    Optional<Assessment> of(Members members) {
        Optional<Assessment> before = known.get(members);
        if (before == null) {
            before = view.findings(members).map(findings -> assess(members, findings));
            known.put(members, before);
        }
        return before;
    }

    private Assessment assess(Members members, List<Findings> findings) {
        boolean ready = members.ids().size() > 1
                && of(members.before())
                        .filter(a -> a.disposition() == Disposition.TO_READ)
                        .isPresent();
        Standing standing = new Standing(
                ready,
                before(members, findings, pictures::carriers),
                before(members, findings, pictures::alike),
                quarantinedLots,
                transcription(members));
        return assessor.assess(new AssessmentInput(findings, tests, standing, outages, view.linked(members)));
    }

    /** What the newest reader of the submission that these messages make wrote down. */
    private Optional<Transcription> transcription(Members members) {
        return readings.of(members.submission()).stream()
                .reduce((a, b) -> b)
                .map(r -> new Transcription(r.lot(), r.mark(), r.marked()));
    }

    /** The photos of which others are alike that came before, in another person's submission. */
    private Set<String> before(
            Members members, List<Findings> findings, Function<PictureFinding, Set<MessageId>> alike) {
        Set<String> keys = new TreeSet<>();
        for (int m = 0; m < findings.size(); m++) {
            for (PictureFinding photo : SeenPictures.cassettePhotos(findings.get(m))) {
                if (sentByAnotherBefore(alike.apply(photo), members.ids().get(m), members)) {
                    keys.add(Standing.pictureKey(m, photo.path()));
                }
            }
        }
        return keys;
    }

    private boolean sentByAnotherBefore(Set<MessageId> carriers, MessageId carrier, Members members) {
        List<MessageId> others = new ArrayList<>(carriers);
        others.removeIf(o -> o.compareTo(carrier) >= 0 || members.ids().contains(o));
        return others.stream()
                .anyMatch(o -> members.ids().stream().noneMatch(m -> ties.samePerson(o, m, members.share(m))));
    }
}
