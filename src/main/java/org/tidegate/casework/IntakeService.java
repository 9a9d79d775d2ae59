package org.tidegate.casework;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tidegate.casework.MessageVault.Unsealed;
import org.tidegate.mailbox.Intake;
import org.tidegate.mailbox.Sighting;
import org.tidegate.rules.Rules;
import org.tidegate.store.NewMessage;
import org.tidegate.store.Store;
import org.tidegate.store.Tx;
import org.tidegate.work.MessageId;
import org.tidegate.work.UserId;
import org.tidegate.work.WorkItem;

/** Takes messages in: durable first, identical bytes one message, every sighting recorded. */
public final class IntakeService implements Intake {

    private final Store store;
    private final MessageVault vault;
    private final Rules rules;
    private final Clock clock;
    private final Milestones milestones;
    private final CommitGroup<List<Arriving>, List<Taken>> commits;

    IntakeService(Store store, MessageVault vault, Rules rules, Clock clock, Milestones milestones) {
        this.store = store;
        this.vault = vault;
        this.rules = rules;
        this.clock = clock;
        this.milestones = milestones;
        this.commits = new CommitGroup<>(this::commit);
    }

    /** What became of one message. */
    public record Taken(MessageId id, Receipt receipt) {}

    private record Arriving(Optional<NewMessage> fresh, Optional<MessageId> known, Optional<Sighting> sighting) {}

    /** @throws RuntimeException where the message cannot be made durable: nothing may be marked then, the daemon stops */
    @Override
    public Receipt take(Sighting sighting, byte[] raw) {
        return takeAll(List.of(new Offer(sighting, raw))).get(0);
    }

    @Override
    public List<Receipt> takeAll(List<Offer> offers) {
        List<Unsealed> messages = offers.stream()
                .map(o -> new Unsealed(o.raw(), vault.mark(o.raw()), delivered(o.sighting())))
                .toList();
        List<Optional<Sighting>> sightings =
                offers.stream().map(o -> Optional.of(o.sighting())).toList();
        return takeTogether(arriving(messages, sightings)).stream()
                .map(Taken::receipt)
                .toList();
    }

    private Optional<Instant> delivered(Sighting sighting) {
        return rules.timing().internalDateIsDelivery() ? sighting.internalDate() : Optional.empty();
    }

    /** Takes a message from a file, as if it had arrived. */
    public Taken take(byte[] raw, Optional<Instant> delivered) {
        List<Arriving> alone =
                arriving(List.of(new Unsealed(raw, vault.mark(raw), delivered)), List.of(Optional.empty()));
        return takeTogether(alone).get(0);
    }

    private List<Arriving> arriving(List<Unsealed> messages, List<Optional<Sighting>> sightings) {
        List<Optional<MessageId>> known = store.read(
                tx -> messages.stream().map(m -> tx.messages().byMark(m.mark())).toList());
        List<Unsealed> unknown = IntStream.range(0, messages.size())
                .filter(i -> known.get(i).isEmpty())
                .mapToObj(messages::get)
                .toList();
        Iterator<NewMessage> kept = vault.keep(unknown, clock.instant()).iterator();
        List<Arriving> arrived = new ArrayList<>();
        for (int i = 0; i < messages.size(); i++) {
            boolean fresh = known.get(i).isEmpty();
            arrived.add(
                    new Arriving(fresh ? Optional.of(kept.next()) : Optional.empty(), known.get(i), sightings.get(i)));
        }
        unknown.forEach(m -> milestones.passed(Milestones.Boundary.SEALED));
        return arrived;
    }

    private List<Taken> takeTogether(List<Arriving> arrived) {
        List<Taken> taken = commits.submit(arrived);
        for (int i = 0; i < arrived.size(); i++) {
            if (taken.get(i).receipt() == Receipt.KNOWN) {
                arrived.get(i).fresh().ifPresent(fresh -> vault.drop(fresh.blob()));
            }
        }
        milestones.passed(Milestones.Boundary.TAKEN);
        return taken;
    }

    private List<List<Taken>> commit(List<List<Arriving>> groups) {
        return store.write(tx -> groups.stream()
                .map(group -> group.stream().map(a -> record(tx, a)).toList())
                .toList());
    }

    private Taken record(Tx tx, Arriving arriving) {
        Optional<MessageId> inserted =
                arriving.fresh().flatMap(m -> tx.messages().insert(m));
        inserted.ifPresent(id -> enqueue(tx, id, arriving.fresh().orElseThrow()));
        MessageId id = inserted.or(arriving::known)
                .or(() -> arriving.fresh().flatMap(m -> tx.messages().byMark(m.mark())))
                .orElseThrow();
        arriving.sighting().ifPresent(s -> sighted(tx, id, s));
        return new Taken(id, inserted.isPresent() ? Receipt.NEW : Receipt.KNOWN);
    }

    private void enqueue(Tx tx, MessageId id, NewMessage message) {
        Instant due =
                message.delivered().orElse(message.taken()).plus(rules.service().replyPromise());
        tx.work().add(WorkItem.Kind.INSPECT, id.value(), due);
        tx.record(
                "message-taken", UserId.DAEMON, List.of(), Map.of("message", number(id), "hash", message.saltedHash()));
    }

    private void sighted(Tx tx, MessageId id, Sighting s) {
        boolean first = tx.messages().sighted(id, s.account(), s.folder(), s.uidValidity(), s.uid(), clock.instant());
        if (first) {
            tx.record(
                    "message-sighted",
                    UserId.DAEMON,
                    List.of(),
                    Map.of(
                            "message", number(id),
                            "uid", Long.toString(s.uid()),
                            "uid-validity", Long.toString(s.uidValidity())));
        }
    }

    private static String number(MessageId id) {
        return Long.toString(id.value());
    }
}
