package org.tidegate.mailbox;

import jakarta.mail.MessagingException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.angus.mail.iap.ByteArray;
import org.eclipse.angus.mail.imap.protocol.BODY;
import org.eclipse.angus.mail.imap.protocol.FetchResponse;
import org.eclipse.angus.mail.imap.protocol.INTERNALDATE;
import org.eclipse.angus.mail.imap.protocol.UID;

/** Takes messages over one connection: fetch, hand to the intake, and only then mark. */
final class Fetcher {

    private static final int PIECE = 4 << 20;

    private final ImapAccount account;
    private final Intake intake;
    private final Consumer<MailboxEvent> events;

    Fetcher(ImapAccount account, Intake intake, Consumer<MailboxEvent> events) {
        this.account = account;
        this.intake = intake;
        this.events = events;
    }

    /** Takes a batch; returns the UIDs that were taken and marked. Messages that vanished meanwhile are not among them. */
    List<Long> take(ImapLink link, Batch batch) throws MessagingException {
        List<Long> taken = new ArrayList<>();
        try {
            if (batch.isLarge() && batch.uids().size() == 1) {
                takeLarge(link, batch, taken);
            } else {
                takeWhole(link, batch, taken);
            }
        } finally {
            if (!taken.isEmpty()) {
                taken.sort(Long::compare);
                link.mark(UidSet.of(taken));
                events.accept(new MailboxEvent.Marked(account.name(), account.folder(), taken.size()));
            }
        }
        return taken;
    }

    private void takeWhole(ImapLink link, Batch batch, List<Long> taken) throws MessagingException {
        List<Intake.Offer> offers = new ArrayList<>();
        for (FetchResponse response : link.fetch(UidSet.of(batch.uids()), "INTERNALDATE BODY.PEEK[]")) {
            UID uid = response.getItem(UID.class);
            BODY body = response.getItem(BODY.class);
            if (uid != null && body != null && body.getByteArray() != null) {
                offers.add(offer(link, uid.uid, date(response), bytes(body.getByteArray())));
            }
        }
        hand(offers, taken);
    }

    private void takeLarge(ImapLink link, Batch batch, List<Long> taken) throws MessagingException {
        long uid = batch.uids().get(0);
        byte[] whole = new byte[(int) Math.min(batch.bytes(), Integer.MAX_VALUE - 16L)];
        int length = 0;
        Optional<Instant> date = Optional.empty();
        while (true) {
            List<FetchResponse> answer =
                    link.fetch(String.valueOf(uid), "INTERNALDATE BODY.PEEK[]<" + length + "." + PIECE + ">");
            Optional<ByteArray> piece = answer.stream()
                    .map(r -> r.getItem(BODY.class))
                    .filter(b -> b != null && b.getByteArray() != null)
                    .map(BODY::getByteArray)
                    .findFirst();
            if (piece.isEmpty()) {
                return;
            }
            date = answer.stream().map(Fetcher::date).flatMap(Optional::stream).findFirst();
            int count = piece.get().getCount();
            whole = length + count > whole.length ? Arrays.copyOf(whole, length + count) : whole;
            System.arraycopy(piece.get().getBytes(), piece.get().getStart(), whole, length, count);
            length += count;
            if (count < PIECE) {
                break;
            }
        }
        byte[] raw = length == whole.length ? whole : Arrays.copyOf(whole, length);
        hand(List.of(offer(link, uid, date, raw)), taken);
    }

    private Intake.Offer offer(ImapLink link, long uid, Optional<Instant> date, byte[] raw) {
        return new Intake.Offer(new Sighting(account.name(), account.folder(), link.uidValidity(), uid, date), raw);
    }

    private void hand(List<Intake.Offer> offers, List<Long> taken) {
        List<Intake.Receipt> receipts = intake.takeAll(offers);
        for (int i = 0; i < offers.size(); i++) {
            Intake.Offer offer = offers.get(i);
            taken.add(offer.sighting().uid());
            events.accept(new MailboxEvent.Taken(offer.sighting(), receipts.get(i), offer.raw().length));
        }
    }

    private static byte[] bytes(ByteArray array) {
        return Arrays.copyOfRange(array.getBytes(), array.getStart(), array.getStart() + array.getCount());
    }

    private static Optional<Instant> date(FetchResponse response) {
        return Optional.ofNullable(response.getItem(INTERNALDATE.class))
                .map(INTERNALDATE::getDate)
                .map(Date::toInstant);
    }
}
