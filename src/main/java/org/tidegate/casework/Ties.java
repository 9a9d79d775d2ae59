package org.tidegate.casework;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tidegate.booking.TestKey;
import org.tidegate.finding.Findings;
import org.tidegate.message.Mailbox;
import org.tidegate.store.Links;
import org.tidegate.store.Links.Kind;
import org.tidegate.store.Links.Link;
import org.tidegate.store.PersonLinks.Part;
import org.tidegate.store.Tx;
import org.tidegate.work.MessageId;

/** By what messages see one another: the same test, one thread, the same picture. */
final class Ties {

    private final Links links;
    private final MessageVault vault;
    private final SeenPictures pictures;
    private final FoldView view;

    Ties(Tx tx, MessageVault vault, SeenPictures pictures, FoldView view) {
        this.links = tx.links();
        this.vault = vault;
        this.pictures = pictures;
        this.view = view;
    }

    /** Records by what the message is tied, now that it is known which test it matches by itself. */
    void record(MessageId id, Findings findings, Optional<TestKey> alone) {
        List<Link> all = new ArrayList<>();
        alone.ifPresent(t -> all.add(new Link(Kind.TEST, t.toString())));
        view.parts(id).forEach(p -> all.add(new Link(Kind.PART, p.test().toString())));
        findings.envelope().messageId().ifPresent(m -> all.add(new Link(Kind.OWN_ID, mark(m))));
        findings.envelope().references().forEach(m -> all.add(new Link(Kind.REFERS_TO, mark(m))));
        findings.envelope().from().stream()
                .map(Mailbox::address)
                .forEach(a -> all.add(new Link(Kind.SENDER, vault.mark("address", a.toLowerCase(Locale.ROOT)))));
        if (!Set.copyOf(all).equals(Set.copyOf(links.of(id)))) {
            links.replace(id, all);
        }
    }

    /** Earlier messages whose submission this one might join. */
    Set<MessageId> joinableBefore(MessageId id) {
        Set<MessageId> before = new TreeSet<>();
        for (Link link : links.of(id)) {
            switch (link.kind()) {
                case TEST -> before.addAll(forTest(link.value()));
                case REFERS_TO -> before.addAll(links.with(Kind.OWN_ID, link.value()));
                case PART, OWN_ID, SENDER -> {}
            }
        }
        before.removeIf(m -> m.compareTo(id) >= 0);
        return before;
    }

    private Set<MessageId> forTest(String test) {
        Set<MessageId> all = new TreeSet<>(links.with(Kind.TEST, test));
        all.addAll(links.with(Kind.PART, test));
        return all;
    }

    /** Later messages that could see a change of this one. */
    Set<MessageId> watchersAfter(MessageId id, MessageId after) {
        Set<MessageId> later = new TreeSet<>();
        for (Link link : links.of(id)) {
            switch (link.kind()) {
                case TEST, PART -> later.addAll(links.with(Kind.TEST, link.value()));
                case OWN_ID -> later.addAll(links.with(Kind.REFERS_TO, link.value()));
                case REFERS_TO, SENDER -> {}
            }
        }
        view.whole(id).ifPresent(f -> later.addAll(pictures.tied(f)));
        later.removeIf(m -> m.compareTo(after) <= 0);
        return later;
    }

    /**
     * Whether the two messages may come from one person: the same booking, or, where a booking is not known, the same sender's
     * address. What is not known is never held against anyone who can be told by the address.
     *
     * @param share what of the second message is meant, where that is a part of it
     */
    boolean samePerson(MessageId other, MessageId own, Optional<Part> share) {
        Set<String> first = refs(other, Kind.TEST, Kind.PART);
        Set<String> second = share.map(s -> Set.of(s.test().ref())).orElseGet(() -> refs(own, Kind.TEST));
        if (!first.isEmpty() && !second.isEmpty()) {
            return !Collections.disjoint(first, second);
        }
        Set<String> senders = values(other, Kind.SENDER);
        senders.retainAll(values(own, Kind.SENDER));
        return !senders.isEmpty();
    }

    private Set<String> refs(MessageId id, Kind... kinds) {
        Set<String> refs = new TreeSet<>();
        for (Kind kind : kinds) {
            values(id, kind).forEach(t -> refs.add(t.split("#", 2)[0]));
        }
        return refs;
    }

    private Set<String> values(MessageId id, Kind kind) {
        Set<String> values = new TreeSet<>();
        links.of(id).stream().filter(l -> l.kind() == kind).forEach(l -> values.add(l.value()));
        return values;
    }

    private String mark(String messageId) {
        return vault.mark("message-id", messageId);
    }
}
