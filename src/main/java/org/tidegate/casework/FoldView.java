package org.tidegate.casework;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidegate.booking.TestKey;
import org.tidegate.finding.Findings;
import org.tidegate.store.StoredMessage;
import org.tidegate.store.Tx;
import org.tidegate.work.MessageId;

/** Messages and findings as one transaction sees them, each opened once. */
final class FoldView {

    private final Tx tx;
    private final MessageVault vault;
    private final Map<MessageId, Optional<Findings>> findings = new HashMap<>();
    private final Map<MessageId, StoredMessage> messages = new HashMap<>();

    FoldView(Tx tx, MessageVault vault) {
        this.tx = tx;
        this.vault = vault;
    }

    StoredMessage message(MessageId id) {
        return messages.computeIfAbsent(
                id, m -> tx.messages().find(m).orElseThrow(() -> new IllegalStateException("no message " + m.value())));
    }

    /** Empty where the message is not inspected yet, or forgotten. */
    Optional<Findings> findings(MessageId id) {
        return findings.computeIfAbsent(id, m -> vault.findings(message(m)));
    }

    /** Empty where one of them is not there any more: then nothing can be assessed. */
    Optional<List<Findings>> findings(List<MessageId> ids) {
        List<Findings> all = ids.stream().flatMap(id -> findings(id).stream()).toList();
        return all.size() == ids.size() ? Optional.of(all) : Optional.empty();
    }

    /** The test that a person said a message is for. */
    Optional<TestKey> linked(MessageId id) {
        return tx.personLinks().of(id);
    }

    /** The same of messages together: the word on the last one that there is a word on. */
    Optional<TestKey> linked(List<MessageId> ids) {
        return ids.stream().flatMap(id -> linked(id).stream()).reduce((a, b) -> b);
    }
}
