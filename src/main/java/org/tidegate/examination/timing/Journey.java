package org.tidegate.examination.timing;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tidegate.finding.Clock;
import org.tidegate.finding.Event;
import org.tidegate.message.Envelope;
import org.tidegate.message.HeaderDate;
import org.tidegate.message.TraceHop;
import org.tidegate.rules.TimingRules;

/** One message's way from the participant to us, as clues. */
final class Journey {

    /** A stamp to the second may stand for anything up to the next one. */
    static final Duration SECOND = Duration.ofMillis(999);

    private final Arrival arrival;
    private final Signatures signatures;
    private final TimingRules rules;
    private final Wording wording;

    Journey(Envelope envelope, Arrival arrival, TimingRules rules, Wording wording) {
        this.arrival = arrival;
        this.signatures = new Signatures(envelope, arrival.time(), rules, wording);
        this.rules = rules;
        this.wording = wording;
    }

    /** The first server that took the message over; our own where no other one is on record. */
    Event firstHop() {
        return arrival.foreign().isEmpty() ? Event.ARRIVED : Event.hop(0);
    }

    List<Constraint> order() {
        List<Constraint> order = new ArrayList<>();
        Event last = Event.SENT;
        for (int k = 0; k < arrival.foreign().size(); k++) {
            order.add(Clues.order(last, Event.hop(k)));
            last = Event.hop(k);
        }
        order.add(Clues.order(last, Event.ARRIVED));
        order.addAll(signatures.order());
        return order;
    }

    Optional<Constraint> arrivalClue() {
        return arrivalClue(Event.ARRIVED, "the message");
    }

    /** When our own server took {@code what}, as the time of {@code event}. */
    Optional<Constraint> arrivalClue(Event event, String what) {
        return arrival.time().map(time -> {
            String host = arrival.boundary().flatMap(TraceHop::by).orElse("our mailbox");
            return new Clues.Source(
                            new Clock(Clock.Kind.OWN_SERVER, host),
                            arrival.boundary()
                                    .map(h -> "Received line " + (h.position() + 1))
                                    .orElse("delivery time"),
                            "our mail server took " + what + " at " + wording.time(time),
                            List.of(),
                            rules.ownClock(),
                            Rank.RECORDED)
                    .at(event, time, time.plus(SECOND));
        });
    }

    /** Hops whose times may prove something, see {@link #doubtful}, and signatures. */
    List<Constraint> trustedStamps() {
        Stream<Constraint> hops =
                IntStream.range(doubtful(), arrival.foreign().size()).boxed().flatMap(k -> hopClue(k).stream());
        return Stream.concat(hops, signatures.clues().stream()).toList();
    }

    /** The stamps that prove nothing: of hops that {@link #doubtful} names. */
    List<Constraint> doubtfulStamps() {
        return IntStream.range(0, doubtful())
                .boxed()
                .flatMap(k -> hopClue(k).stream())
                .toList();
    }

    /** A time written on the way, before which the message was sent. */
    record Stamp(Instant time, String place, String words) {}

    /** All times written before us, doubtful hops and the sender's own clock too: they may support a milder verdict. */
    List<Stamp> sendingStamps(Optional<HeaderDate> date) {
        Stream<Stamp> hops = IntStream.range(0, arrival.foreign().size())
                .boxed()
                .flatMap(k -> hopClue(k).stream())
                .map(c -> new Stamp(
                        Instant.ofEpochMilli(c.least()),
                        c.clue().place(),
                        c.clue().words()));
        Stream<Stamp> written = date.flatMap(HeaderDate::known).stream()
                .map(t -> new Stamp(t, "Date", "the message itself says that it was sent at " + wording.time(t)));
        return Stream.of(hops, signatures.stamps().stream(), written)
                .flatMap(s -> s)
                .toList();
    }

    Optional<Instant> arrived() {
        return arrival.time();
    }

    private Optional<Constraint> hopClue(int k) {
        TraceHop hop = arrival.foreign().get(k);
        return time(k).map(time -> {
            String host = hop.by().orElse("an unnamed server");
            return new Clues.Source(
                            new Clock(Clock.Kind.OTHER_SERVER, host),
                            "Received line " + (hop.position() + 1),
                            named(host) + " took the message at " + wording.time(time),
                            List.of(Assumptions.serverHonest(host)),
                            rules.serverClock(),
                            Rank.NETWORK)
                    .at(Event.hop(k), time, time.plus(SECOND));
        });
    }

    /** A line that is not ours may bear our name all the same. */
    private String named(String host) {
        return rules.ownHosts().stream().anyMatch(own -> own.equalsIgnoreCase(host))
                ? "a mail server that is not ours but calls itself " + host
                : "the mail server " + host;
    }

    private Optional<Instant> time(int k) {
        return arrival.foreign().get(k).time().flatMap(HeaderDate::known);
    }

    /** How many hops from the first one on prove nothing: all where the chain runs backwards, else all up to the last long gap. */
    private int doubtful() {
        int doubtful = 0;
        Optional<Instant> earlier = Optional.empty();
        int count = arrival.foreign().size();
        for (int k = 0; k <= count; k++) {
            Optional<Instant> now = k < count ? time(k) : arrival.time();
            if (now.isEmpty()) {
                continue;
            }
            if (earlier.isPresent()) {
                Duration gap = Duration.between(earlier.get(), now.get());
                if (gap.compareTo(rules.serverClock().multipliedBy(-2)) < 0) {
                    return count;
                }
                doubtful = gap.compareTo(rules.hopGap()) > 0 ? k : doubtful;
            }
            earlier = now;
        }
        return doubtful;
    }
}
