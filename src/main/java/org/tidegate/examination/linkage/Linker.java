package org.tidegate.examination.linkage;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidegate.booking.TestRecord;
import org.tidegate.examination.linkage.LinkageResult.Outcome;
import org.tidegate.finding.SubjectReading;
import org.tidegate.rules.MatchingRules;

/**
 * Finds the one test that a message is about, by probabilistic record linkage (Fellegi, Sunter 1969). Pure: the same
 * statement, index and rules give the same result.
 */
public final class Linker {

    /** A message may come before its slot: a person who was early. */
    private static final Duration EARLY = Duration.ofMinutes(45);

    private static final String TIME = "time";
    private static final int MOST_CANDIDATES = 10;
    private static final int MOST_COMPARED = 128;

    private final MatchingRules rules;
    private final ZoneId zone;
    private final Weights weights;
    private final NameComparison names;
    private final TimeComparison times;
    private final double anotherTest;

    /** @param zone the clinic's zone, in which stated times are wall times */
    public Linker(MatchingRules rules, ZoneId zone, Nicknames nicknames) {
        this.rules = rules;
        this.zone = zone;
        this.weights = new Weights(rules);
        this.names = new NameComparison(nicknames);
        this.times = new TimeComparison(weights, zone);
        this.anotherTest = Weights.log2((1 - rules.noTestPrior()) / rules.noTestPrior());
    }

    /** @param index the open tests; of an appointment with several attempts only the first unfinished one */
    public LinkageResult link(Statement statement, TestIndex index) {
        TestIndex.Range open = open(statement, index);
        double prior = -Weights.log2(Math.max(1, open.size()));
        Map<String, Candidate> best = new HashMap<>();
        FieldComparisons comparisons = comparisons(statement, index);
        List<Integer> readings = Alternatives.of(statement.readings());
        Arrays.stream(likeliest(statement, index)).mapToObj(index::test).forEach(test -> {
            Candidate c = candidate(statement, readings, test, prior, comparisons);
            if (c.probability() >= rules.candidateAt()) {
                best.merge(test.appointment().ref(), c, this::openAttempt);
            }
        });
        LinkageResult decided = decide(best.values().stream()
                .sorted(Comparator.comparingDouble(Candidate::evidence)
                        .reversed()
                        .thenComparing(c -> c.test().ref()))
                .limit(MOST_CANDIDATES)
                .toList());
        return decided.test()
                .flatMap(index::find)
                .flatMap(found -> statement
                        .fromAddress()
                        .flatMap(from -> SenderNamesake.of(
                                from, found, index, test -> candidate(statement, readings, test, prior, comparisons))))
                .map(namesake -> unsure(decided, namesake))
                .orElse(decided);
    }

    TestIndex.Range open(Statement statement, TestIndex index) {
        return index.open(
                statement.arrived().minus(rules.openWithin()),
                statement.arrived().plus(EARLY));
    }

    /** Ranks of the tests that are worth comparing. */
    int[] likeliest(Statement statement, TestIndex index) {
        return index.likeliest(keys(statement), open(statement, index), MOST_COMPARED);
    }

    FieldComparisons comparisons(Statement statement, TestIndex index) {
        return new FieldComparisons(weights, names, times, statement, index);
    }

    /** Two attempts of one appointment are no rivals: the earlier open one, unless the evidence tells them apart. */
    private Candidate openAttempt(Candidate a, Candidate b) {
        boolean inOrder = a.test().attempt() <= b.test().attempt();
        Candidate earlier = inOrder ? a : b;
        Candidate later = inOrder ? b : a;
        return later.evidence() - earlier.evidence() >= Weights.log2(rules.rivalFactor()) ? later : earlier;
    }

    private Stream<String> keys(Statement statement) {
        Stream<String> ofReadings = Alternatives.of(statement.readings()).stream()
                .map(statement.readings()::get)
                .flatMap(r -> BlockingKeys.of(r, said(r)));
        Stream<String> ofSender = Stream.concat(
                statement.fromAddress().stream().map(BlockingKeys::address),
                statement.fromDisplayName().stream().flatMap(BlockingKeys::ofName));
        return Stream.concat(ofReadings, ofSender);
    }

    private Optional<Instant> said(SubjectReading reading) {
        return reading.testTime().map(t -> t.atZone(zone).toInstant());
    }

    private Candidate candidate(
            Statement statement, List<Integer> readings, TestRecord test, double prior, FieldComparisons comparisons) {
        return readings.stream()
                .map(i -> candidate(statement, i, test, prior, comparisons))
                .reduce((best, next) -> next.evidence() > best.evidence() ? next : best)
                .orElseThrow();
    }

    private Candidate candidate(
            Statement statement, int number, TestRecord test, double prior, FieldComparisons comparisons) {
        SubjectReading reading = statement.readings().get(number);
        List<FieldWeight> ofPerson = comparisons.person(reading, test.appointment());
        List<FieldWeight> ofTest = comparisons.test(reading, test, number == 0);
        List<FieldWeight> all = new ArrayList<>(ofPerson);
        all.addAll(ofTest);
        all.addAll(comparisons.place(reading, test));
        Alternatives.penalty(statement.readings(), number).ifPresent(all::add);
        double total = prior + sum(all);
        double withOtherTest = withOtherTest(total, anotherTest + sum(ofTest));
        if (total - withOtherTest >= 0.05) {
            all.add(new FieldWeight(
                    Candidate.ANOTHER_TEST,
                    "possible",
                    withOtherTest - total,
                    "the same person may mean a test not in the book"));
        }
        return new Candidate(test.key(), probability(withOtherTest), prior, List.copyOf(all), withOtherTest, number);
    }

    /** A message that is surely this person's may still be about a test that is not in the book: both chances of error add up. */
    private static double withOtherTest(double personAndTest, double testAlone) {
        return -Weights.log2(Math.pow(2, -personAndTest) + Math.pow(2, -testAlone));
    }

    static double probability(double log2Odds) {
        return 1 / (1 + Math.pow(2, -log2Odds));
    }

    private static double sum(List<FieldWeight> weights) {
        return weights.stream().mapToDouble(FieldWeight::weight).sum();
    }

    /** Nearly as likely; or a namesake whose slot fits the stated time far better: a son who writes from his father's address. */
    private boolean rivals(Candidate first, Candidate other) {
        double factor = Weights.log2(rules.rivalFactor());
        boolean namesake = other.nameWeight() >= first.nameWeight();
        boolean fitsBetter = other.weightOf(TIME) - first.weightOf(TIME) >= factor;
        return first.evidence() - other.evidence() < factor * margin(first, other) || namesake && fitsBetter;
    }

    /** Less where only the first bears the stated name; more where it is alike and another's cut short: Brand, of Brandt and Brandvold. */
    private static double margin(Candidate first, Candidate other) {
        if (named(first)) {
            return named(other) ? 1 : 0.5;
        }
        boolean cut =
                !family(first).equals(NameAgreement.EXACT) && family(other).equals(NameAgreement.INITIAL);
        return cut ? 1.5 : 1;
    }

    private static String family(Candidate c) {
        return c.weights().stream()
                .filter(w -> w.field().equals("family_name"))
                .map(FieldWeight::level)
                .findFirst()
                .orElse(NameAgreement.UNSTATED);
    }

    /** Booked under the very name that is stated: of Marsh and March the one who wrote Marsh. */
    private static boolean named(Candidate c) {
        return c.weights().stream()
                .filter(w -> Candidate.NAME.contains(w.field()))
                .allMatch(w -> w.level().equals(NameAgreement.EXACT));
    }

    private static LinkageResult unsure(LinkageResult decided, Candidate namesake) {
        List<Candidate> all = new ArrayList<>(decided.candidates());
        all.add(namesake);
        return new LinkageResult(Outcome.AMBIGUOUS, Optional.empty(), decided.probability(), List.copyOf(all));
    }

    private LinkageResult decide(List<Candidate> candidates) {
        if (candidates.isEmpty()) {
            return new LinkageResult(Outcome.NONE, Optional.empty(), 0, List.of());
        }
        Candidate first = candidates.get(0);
        boolean rival = candidates.stream().skip(1).anyMatch(c -> rivals(first, c));
        boolean match = first.probability() >= rules.matchAt() && !rival;
        return new LinkageResult(
                match ? Outcome.MATCH : Outcome.AMBIGUOUS,
                match ? Optional.of(first.test()) : Optional.empty(),
                first.probability(),
                candidates);
    }
}
