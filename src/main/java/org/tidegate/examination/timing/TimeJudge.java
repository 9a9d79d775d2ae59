package org.tidegate.examination.timing;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tidegate.examination.timing.TimeJudgement.ClockTimes;
import org.tidegate.examination.timing.TimeJudgement.Conflict;
import org.tidegate.examination.timing.TimeJudgement.PhotoRef;
import org.tidegate.finding.Clue;
import org.tidegate.finding.Event;
import org.tidegate.finding.PictureFinding;
import org.tidegate.finding.Verdict;
import org.tidegate.finding.WindowVerdict;
import org.tidegate.finding.WindowVerdict.Check;
import org.tidegate.message.Envelope;
import org.tidegate.message.HeaderDate;
import org.tidegate.rules.Protocol;
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
        TestClues test = new TestClues(c.test(), rules, wording(c));
        List<StatedTime> stated = stated(c, test);
        List<Constraint> testClues = Assumptions.allowed(test.clues(stated), rules);
        List<Judged> photos = photos(c, testClues);
        Optional<Judged> photo = governing(photos);
        SentJudge.Result sent = sent(c, sentWith(c, photos), testClues);
        return new TimeJudgement(
                photo.map(p -> p.result().verdict()),
                photo.map(Judged::ref),
                photo.flatMap(p -> p.result().answer().side()),
                sent.verdict(),
                sent.softened(),
                sent.outage(),
                photo.flatMap(p -> conflict(p.result())),
                stated.stream().filter(s -> !s.fits()).map(test::misfit).reduce((a, b) -> a + "; " + b),
                photo.filter(p -> !p.timed()).isPresent(),
                photo.flatMap(p -> p.result().clock()),
                clockTimes(c, test, stated));
    }

    /** What the first message that states a test time says, and what stands on the cassette. */
    private List<StatedTime> stated(TimeCase c, TestClues test) {
        Stream<StatedTime> written = c.messages().stream()
                .flatMap(m -> StatedTime.of(m.reading(), envelope(m).date(), test.record()).stream())
                .limit(1);
        Stream<StatedTime> transcribed = c.onCassette().stream()
                .map(t -> StatedTime.onCassette(t, wording(c).day(), test.record()));
        return Stream.concat(written, transcribed).toList();
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
        Capture capture = Capture.of(picture);
        Journey journey = journey(c, message);
        PhotoJudge judge = new PhotoJudge(capture, shared(testClues, journey), journey, rules, wording(c));
        return new Judged(
                ref, judge.judge(readingWindow(c.protocol()), samePhoneDate(message, picture)), capture.timed());
    }

    private static List<Constraint> shared(List<Constraint> testClues, Journey journey) {
        List<Constraint> shared = new ArrayList<>(testClues);
        shared.addAll(journey.order());
        journey.arrivalClue().ifPresent(shared::add);
        shared.addAll(journey.trustedStamps());
        return shared;
    }

    private Optional<HeaderDate> samePhoneDate(MessageEvidence message, PictureFinding picture) {
        return envelope(message)
                .date()
                .filter(d -> SamePhone.made(envelope(message).mailProgram(), picture, rules));
    }

    /**
     * What a drawing shows: the clues of the best-founded network of one photo, or of the first message where there is none, and the
     * mail servers' stamps that prove nothing.
     */
    public List<Clue> clues(TimeCase c, Optional<PhotoRef> photo) {
        TestClues test = new TestClues(c.test(), rules, wording(c));
        MessageEvidence message = c.messages().get(photo.map(PhotoRef::message).orElse(0));
        Journey journey = journey(c, message);
        List<Constraint> clues = shared(Assumptions.allowed(test.clues(stated(c, test)), rules), journey);
        clues.addAll(journey.doubtfulStamps());
        photo.map(p -> message.findings().pictures().get(p.picture())).ifPresent(picture -> {
            Optional<HeaderDate> date = samePhoneDate(message, picture);
            Capture capture = Capture.of(picture);
            ZoneCase zone = ZoneCase.of(capture.device(), date, rules).get(0);
            clues.addAll(new PhotoClues(capture, date, journey.firstHop(), rules, wording(c))
                    .in(zone)
                    .clues());
        });
        return clues.stream().map(Constraint::clue).toList();
    }

    private Question readingWindow(Protocol protocol) {
        return Question.between(
                Check.PHOTO, Event.TEST, PhotoClues.PHOTO, protocol.readFrom(), protocol.readUntil(), rules.grace());
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

    /** The first message whose photo of the cassette does not lie outside the reading window; else the first with a cassette. */
    private static int sentWith(TimeCase c, List<Judged> photos) {
        return photos.stream()
                .filter(p -> p.result().verdict().verdict() != Verdict.OUTSIDE)
                .map(p -> p.ref().message())
                .findFirst()
                .orElseGet(() -> IntStream.range(0, c.messages().size())
                        .filter(m -> c.messages().get(m).carriesCassette())
                        .findFirst()
                        .orElse(0));
    }

    private SentJudge.Result sent(TimeCase c, int index, List<Constraint> testClues) {
        Optional<WindowVerdict> late = new Supplements(c, rules, wording(c)).late();
        if (late.isPresent()) {
            return SentJudge.Result.of(late.get());
        }
        MessageEvidence message = c.messages().get(index);
        return new SentJudge(slotEnd(c), c.protocol(), testClues, wording(c))
                .judge(journey(c, message), envelope(message).date(), c.outages());
    }

    private Wording wording(TimeCase c) {
        return new Wording(
                rules.zone(),
                c.test()
                        .appointment()
                        .slotStart()
                        .atZoneSameInstant(rules.zone())
                        .toLocalDate());
    }

    private static Instant slotEnd(TimeCase c) {
        return c.test().appointment().slotEnd().toInstant();
    }

    private Journey journey(TimeCase c, MessageEvidence message) {
        return new Journey(envelope(message), arrival(message), rules, wording(c));
    }

    private Arrival arrival(MessageEvidence message) {
        return Arrival.of(envelope(message), message.findings().delivered(), rules);
    }

    private static Envelope envelope(MessageEvidence message) {
        return message.findings().envelope();
    }

    private static Optional<Conflict> conflict(PhotoJudge.Result result) {
        boolean decides = result.verdict().verdict() == Verdict.UNDETERMINED;
        return result.conflict().map(c -> new Conflict(c.clues(), words(c), decides));
    }

    private static String words(Belief.Contradiction contradiction) {
        Clue setAside = contradiction.setAside().clue();
        List<String> others = contradiction.clues().stream()
                .filter(clue -> !clue.equals(setAside) && !clue.clock().equals(Clues.NATURE))
                .map(Clue::words)
                .toList();
        return "It cannot be that " + setAside.words() + ": " + String.join(", but ", others) + ".";
    }

    private ClockTimes clockTimes(TimeCase c, TestClues test, List<StatedTime> stated) {
        Instant start = test.timer()
                .or(() -> stated.stream()
                        .filter(StatedTime::fits)
                        .map(StatedTime::time)
                        .findFirst())
                .orElseGet(() -> c.test().appointment().slotStart().toInstant());
        return TestWindows.at(start, c.protocol(), slotEnd(c));
    }
}
