package org.tidegate.examination.timing;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tidegate.examination.timing.TimeJudgement.ClockTimes;
import org.tidegate.examination.timing.TimeJudgement.Conflict;
import org.tidegate.examination.timing.TimeJudgement.PhotoRef;
import org.tidegate.examination.timing.TimeJudgement.Side;
import org.tidegate.finding.Event;
import org.tidegate.finding.PictureFinding;
import org.tidegate.finding.Verdict;
import org.tidegate.finding.WindowVerdict.Check;
import org.tidegate.message.Envelope;
import org.tidegate.rules.TimingRules;

/** Judges a submission's times (DESIGN 6). Pure: the same case gives the same judgement. */
public final class TimeJudge {

    private final TimingRules rules;

    public TimeJudge(TimingRules rules) {
        this.rules = rules;
    }

    /** One cassette photo with its verdict. */
    private record Judged(PhotoRef ref, PhotoJudge.Result result, boolean timed) {}

    public TimeJudgement judge(TimeCase c) {
        TestClues test = new TestClues(c.test(), rules);
        Optional<StatedTime> stated = stated(c, test);
        List<Constraint> testClues =
                PhotoJudge.allowedBy(rules, test.clues(stated).stream()).toList();
        Optional<Judged> photo = governing(photos(c, testClues));
        int message = photo.map(p -> p.ref().message()).orElseGet(() -> firstWithCassette(c));
        SentJudge.Result sent = sent(c, message, testClues);
        Optional<Conflict> conflict = photo.flatMap(p -> conflict(p.result()));
        return new TimeJudgement(
                photo.map(p -> p.result().verdict()),
                photo.map(Judged::ref),
                photo.flatMap(p -> side(p.result().answer())),
                sent.verdict(),
                sent.softened(),
                sent.outage(),
                conflict,
                stated.filter(s -> !s.fits()).isPresent(),
                photo.filter(p -> !p.timed()).isPresent(),
                photo.flatMap(p -> p.result().clock()),
                clockTimes(c, test, stated));
    }

    private Optional<StatedTime> stated(TimeCase c, TestClues test) {
        for (MessageEvidence message : c.messages()) {
            Optional<StatedTime> stated =
                    StatedTime.of(message.reading(), envelope(message).date(), test.record());
            if (stated.isPresent()) {
                return stated;
            }
        }
        return Optional.empty();
    }

    private List<Judged> photos(TimeCase c, List<Constraint> testClues) {
        List<Judged> photos = new ArrayList<>();
        for (int m = 0; m < c.messages().size(); m++) {
            MessageEvidence message = c.messages().get(m);
            for (int picture : message.cassettePhotos()) {
                photos.add(judge(c, new PhotoRef(m, picture), message, testClues));
            }
        }
        return photos;
    }

    private Judged judge(TimeCase c, PhotoRef ref, MessageEvidence message, List<Constraint> testClues) {
        PictureFinding picture = message.findings().pictures().get(ref.picture());
        Journey journey = journey(message);
        boolean samePhone = SamePhone.made(envelope(message).mailProgram(), picture, rules);
        PhotoClues photo = new PhotoClues(picture, envelope(message).date(), samePhone, journey, rules);
        List<Constraint> shared = new ArrayList<>(testClues);
        shared.addAll(journey.order());
        journey.arrivalClue().ifPresent(shared::add);
        shared.addAll(journey.trustedHops());
        Question inWindow = Question.between(
                Check.PHOTO,
                Event.TEST,
                PhotoClues.PHOTO,
                c.protocol().readFrom(),
                c.protocol().readUntil(),
                rules.grace());
        return new Judged(ref, new PhotoJudge(photo, shared, rules).judge(inWindow), photo.timed());
    }

    /** The photos taken inside the window govern, then those that might have been; the first one among equals. */
    private static Optional<Judged> governing(List<Judged> photos) {
        return photos.stream()
                .min(Comparator.comparingInt(p -> switch (p.result().answer().verdict()) {
                    case INSIDE -> 0;
                    case UNDETERMINED -> 1;
                    case OUTSIDE -> 2;
                }));
    }

    private static int firstWithCassette(TimeCase c) {
        for (int m = 0; m < c.messages().size(); m++) {
            if (c.messages().get(m).carriesCassette()) {
                return m;
            }
        }
        return 0;
    }

    private SentJudge.Result sent(TimeCase c, int index, List<Constraint> testClues) {
        MessageEvidence message = c.messages().get(index);
        Arrival arrival = arrival(message);
        return new SentJudge(c.test(), c.protocol())
                .judge(testClues, journey(message), envelope(message).date(), arrival, c.outages());
    }

    private Journey journey(MessageEvidence message) {
        return new Journey(arrival(message), rules);
    }

    private Arrival arrival(MessageEvidence message) {
        return Arrival.of(envelope(message), message.findings().delivered(), rules);
    }

    private static Envelope envelope(MessageEvidence message) {
        return message.findings().envelope();
    }

    private static Optional<Side> side(Answer answer) {
        if (answer.verdict() != Verdict.OUTSIDE) {
            return Optional.empty();
        }
        if (answer.late()) {
            return Optional.of(Side.LATE);
        }
        return Optional.of(answer.beforeStart() ? Side.BEFORE_TEST : Side.EARLY);
    }

    private static Optional<Conflict> conflict(PhotoJudge.Result result) {
        boolean decides = result.verdict().verdict() == Verdict.UNDETERMINED;
        return result.conflict()
                .map(c -> new Conflict(
                        c.clues(),
                        String.join(
                                "; but ",
                                c.clues().stream().map(clue -> clue.words()).toList()),
                        decides));
    }

    private ClockTimes clockTimes(TimeCase c, TestClues test, Optional<StatedTime> stated) {
        Instant start = test.timer()
                .or(() -> stated.filter(StatedTime::fits).map(StatedTime::time))
                .orElseGet(() -> c.test().appointment().slotStart().toInstant());
        Question deadline = new SentJudge(c.test(), c.protocol()).deadline(Event.ARRIVED);
        Instant from = deadline.earlier().equals(Event.EPOCH) ? Instant.EPOCH : start;
        return new ClockTimes(
                start.plus(c.protocol().readFrom()),
                start.plus(c.protocol().readUntil()),
                from.plus(Duration.ofMillis(deadline.most())));
    }
}
