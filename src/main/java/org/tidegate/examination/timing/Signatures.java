package org.tidegate.examination.timing;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tidegate.finding.Clock;
import org.tidegate.finding.Event;
import org.tidegate.message.DkimSignature;
import org.tidegate.message.Envelope;
import org.tidegate.rules.TimingRules;

/**
 * Times at which domains signed the message: {@code t=} of a DKIM signature (RFC 6376 §3.5). One counts where the signature holds, where
 * it covers sender, subject and Date, which we read, and the whole body with the photo.
 */
final class Signatures {

    /** What we read and a signature must therefore cover. */
    private static final List<String> READ = List.of("from", "subject", "date");

    private final List<DkimSignature> sound;
    private final Optional<Instant> arrived;
    private final TimingRules rules;
    private final Wording wording;

    Signatures(Envelope envelope, Optional<Instant> arrived, TimingRules rules, Wording wording) {
        this.sound = envelope.dkim().stream().filter(Signatures::sound).toList();
        this.arrived = arrived;
        this.rules = rules;
        this.wording = wording;
    }

    private static boolean sound(DkimSignature s) {
        return s.verified()
                && s.time().isPresent()
                && s.wholeBody()
                && s.signedHeaders().containsAll(READ);
    }

    /** A message is signed after it was sent and before it reaches us. */
    List<Constraint> order() {
        return prompt().flatMap(i ->
                        List.of(Clues.order(Event.SENT, Event.signed(i)), Clues.order(Event.signed(i), Event.ARRIVED))
                                .stream())
                .toList();
    }

    /** Signatures that may prove something: one made long before we got the message is as doubtful as such a hop. */
    List<Constraint> clues() {
        return prompt().map(this::clue).toList();
    }

    /** All times of sound signatures: they may support a milder verdict. */
    List<Journey.Stamp> stamps() {
        return IntStream.range(0, sound.size())
                .mapToObj(this::clue)
                .map(c -> new Journey.Stamp(
                        Instant.ofEpochMilli(c.least()),
                        c.clue().place(),
                        c.clue().words()))
                .toList();
    }

    private java.util.stream.Stream<Integer> prompt() {
        return IntStream.range(0, sound.size()).filter(this::isPrompt).boxed();
    }

    private boolean isPrompt(int i) {
        return arrived.filter(a -> Duration.between(time(i), a).compareTo(rules.hopGap()) <= 0)
                .isPresent();
    }

    private Constraint clue(int i) {
        String domain = sound.get(i).domain();
        return new Clues.Source(
                        new Clock(Clock.Kind.OTHER_SERVER, domain),
                        "DKIM-Signature of " + domain,
                        "the mail service " + domain + " signed the message at " + wording.time(time(i)),
                        List.of(Assumptions.serverHonest(domain)),
                        rules.serverClock(),
                        Rank.NETWORK)
                .at(Event.signed(i), time(i), time(i).plus(Journey.SECOND));
    }

    private Instant time(int i) {
        return sound.get(i).time().orElseThrow();
    }
}
