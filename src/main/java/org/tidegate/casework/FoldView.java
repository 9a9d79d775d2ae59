package org.tidegate.casework;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidegate.booking.TestKey;
import org.tidegate.finding.Findings;
import org.tidegate.store.PersonLinks.Part;
import org.tidegate.store.StoredMessage;
import org.tidegate.store.Tx;
import org.tidegate.work.MessageId;

/** Messages and findings as one transaction sees them, each opened once. */
final class FoldView {

    private final Tx tx;
    private final MessageVault vault;
    private final Map<MessageId, Optional<Findings>> findings = new HashMap<>();
    private final Map<MessageId, StoredMessage> messages = new HashMap<>();
    private final Map<MessageId, List<Part>> parts = new HashMap<>();

    FoldView(Tx tx, MessageVault vault) {
        this.tx = tx;
        this.vault = vault;
    }

    StoredMessage message(MessageId id) {
        return messages.computeIfAbsent(
                id, m -> tx.messages().find(m).orElseThrow(() -> new IllegalStateException("no message " + m.value())));
    }

    /** Whoever its pictures are for. Empty where the message is not inspected yet, or forgotten. */
    Optional<Findings> whole(MessageId id) {
        return findings.computeIfAbsent(id, m -> vault.findings(message(m).whole()));
    }

    /** With the pictures that are left to its own submission. */
    Optional<Findings> findings(MessageId id) {
        return whole(id).map(f -> f.showing(message(id)::shows));
    }

    /** With what is for this submission. Empty where one of them is not there any more: then nothing can be assessed. */
    Optional<List<Findings>> findings(Members members) {
        List<Findings> all = members.ids().stream()
                .flatMap(id -> findings(members, id).stream())
                .toList();
        return all.size() == members.ids().size() ? Optional.of(all) : Optional.empty();
    }

    private Optional<Findings> findings(Members members, MessageId id) {
        return members.share(id)
                .map(share -> whole(id).map(f -> f.showing(share.pictures()::contains)))
                .orElseGet(() -> findings(id));
    }

    /** The further tests that a person split the message for. */
    List<Part> parts(MessageId id) {
        return parts.computeIfAbsent(id, m -> tx.personLinks().parts(m));
    }

    /** The test that a person said a message is for. */
    Optional<TestKey> linked(MessageId id) {
        return tx.personLinks().of(id);
    }

    /** The same of messages together: what a part was made for, else the word on the last one that there is a word on. */
    Optional<TestKey> linked(Members members) {
        if (members.part().isPresent()) {
            return members.part().map(Part::test);
        }
        return members.ids().stream().flatMap(id -> linked(id).stream()).reduce((a, b) -> b);
    }
}
