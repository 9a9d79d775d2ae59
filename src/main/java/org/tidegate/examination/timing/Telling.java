package org.tidegate.examination.timing;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.tidegate.finding.Assumption;
import org.tidegate.finding.Event;
import org.tidegate.finding.WindowVerdict.DerivationStep;

/** Tells a proving path: one sentence a step, and what follows from them all. */
final class Telling {

    /** {@link DerivationStep#clue()} of the sentence that draws the conclusion from the steps before it. */
    static final String CONCLUSION = "conclusion";

    /** {@link DerivationStep#clue()} of the sentence that sums up the networks of other zones. */
    static final String OTHER_ZONES = "other zones";

    /** {@link DerivationStep#clue()} of a sentence that opens one of several ways out of a contradiction among equals. */
    static final String ALTERNATIVE = "alternative";

    /** {@link DerivationStep#clue()} of a sentence that says what is missing. */
    static final String MISSING = "missing";

    /** Opens every conclusion. */
    static final String THEREFORE = "So ";

    private final Wording wording;
    private final Question question;

    Telling(Wording wording, Question question) {
        this.wording = wording;
        this.question = question;
    }

    /**
     * A path with its conclusion.
     *
     * @param leansOn assumptions of all its clues
     */
    record Chain(List<DerivationStep> steps, List<Assumption> leansOn) {}

    Chain chain(Network network, Event from, Event to, boolean inside) {
        List<DerivationStep> steps = new ArrayList<>();
        List<Assumption> leansOn = new ArrayList<>();
        for (Network.Edge edge : network.path(from, to)) {
            tell(step(network.events(), edge), steps);
            leansOn.addAll(edge.origin().clue().leansOn());
        }
        long bound = network.most(from, to);
        steps.add(new DerivationStep(from, to, Duration.ofMillis(bound), CONCLUSION, conclusion(from, bound, inside)));
        return new Chain(steps, leansOn);
    }

    /** What follows from the order of things is told at one go, however many servers stand between. */
    private static void tell(DerivationStep step, List<DerivationStep> told) {
        int last = told.size() - 1;
        if (last < 0
                || !step.clue().equals(Clues.ORDER)
                || !told.get(last).clue().equals(Clues.ORDER)) {
            told.add(step);
            return;
        }
        DerivationStep before = told.get(last);
        told.set(
                last,
                new DerivationStep(
                        before.from(),
                        step.to(),
                        before.bound().plus(step.bound()),
                        Clues.ORDER,
                        Wording.sentence(Clues.inOrder(step.to(), before.from())) + "."));
    }

    private DerivationStep step(EventIndex events, Network.Edge edge) {
        Event from = events.event(edge.from());
        Event to = events.event(edge.to());
        String words = Wording.sentence(words(edge.origin())) + allowance(edge, from) + bound(edge, from, to) + ".";
        return new DerivationStep(
                from, to, Duration.ofMillis(edge.bound()), edge.origin().clue().place(), words);
    }

    /** Habits that we suppose are told as such. */
    private static String words(Constraint origin) {
        return (origin.rank().supposed() ? "we take it that " : "")
                + origin.clue().words();
    }

    /** A clue on the test time gives a span; what matters of it is said. */
    private String bound(Network.Edge edge, Event from, Event to) {
        if (from.equals(Event.EPOCH) && to.equals(Event.TEST)) {
            return ", so the test began no later than " + wording.time(Instant.ofEpochMilli(edge.bound()));
        }
        if (to.equals(Event.EPOCH) && from.equals(Event.TEST)) {
            return ", so the test began no earlier than " + wording.time(Instant.ofEpochMilli(-edge.bound()));
        }
        return "";
    }

    /** By how much the clue gives way: a tolerance granted, or a stretch to fit more trusted clues. */
    private static String allowance(Network.Edge edge, Event from) {
        Constraint origin = edge.origin();
        long atWord = from.equals(origin.clue().earlier()) ? origin.most() : -origin.least();
        long given = edge.bound() - atWord;
        if (given <= 0) {
            return "";
        }
        String span = Wording.span(Duration.ofMillis(given));
        if (origin.rank() == Rank.DEVICE_CLOCK) {
            return given == origin.tolerance()
                    ? " to within " + span
                    : " but for " + span + ", to fit more trusted clocks";
        }
        return given == origin.tolerance()
                ? " (that clock may be off by " + span + ")"
                : " (" + span + " given, to fit more trusted clocks)";
    }

    /** Sums up the networks of the other zones; {@code margin} is the smallest of them all. */
    static DerivationStep otherZones(Question q, int count, long margin) {
        String zones = count == 1 ? "In the one other zone" : "In each of the " + count + " other zones";
        String words = zones + " that the evidence leaves open it is the same, " + (margin < 0 ? "outside" : "inside")
                + " by " + Wording.span(Duration.ofMillis(margin)) + " or more.";
        return new DerivationStep(q.earlier(), q.later(), Duration.ofMillis(margin), OTHER_ZONES, words);
    }

    /** The clinic's zone fell, and another one would put the photo into the window. */
    static DerivationStep openZone(Question q) {
        String words =
                "The photo's time bears no zone: taken for the clinic's it contradicts the other clocks, taken for another"
                        + " one in use it lies in the window.";
        return new DerivationStep(q.earlier(), q.later(), Duration.ZERO, OTHER_ZONES, words);
    }

    private String conclusion(Event from, long bound, boolean inside) {
        boolean upper = from.equals(question.earlier());
        long limit = upper == inside ? question.most() : question.least();
        return THEREFORE + Clues.happened(question.later()) + " " + distance(upper, upper ? bound : -bound) + "; "
                + window(upper == inside) + " " + place(limit) + grace() + ".";
    }

    private String distance(boolean upper, long millis) {
        if (question.earlier().equals(Event.EPOCH)) {
            return (upper ? "no later than " : "no earlier than ") + wording.time(Instant.ofEpochMilli(millis));
        }
        boolean before = millis < 0;
        String atMost = upper == before ? "at least " : "at most ";
        return atMost + Wording.span(Duration.ofMillis(millis)) + (before ? " before " : " after ") + reference();
    }

    private String window(boolean end) {
        if (!question.hasStart()) {
            return "the limit is";
        }
        return end ? "the window closes" : "the window opens";
    }

    private String grace() {
        return question.grace() == 0 ? "" : ", with " + Wording.span(Duration.ofMillis(question.grace())) + " of grace";
    }

    private String place(long limit) {
        return question.earlier().equals(Event.EPOCH)
                ? "at " + wording.time(Instant.ofEpochMilli(limit))
                : Wording.span(Duration.ofMillis(limit)) + " after it";
    }

    private String reference() {
        boolean supplement =
                question.earlier().kind() == Event.Kind.HOP && question.later().equals(Event.ARRIVED);
        return supplement ? "the first message reached us" : Clues.happened(question.earlier());
    }
}
