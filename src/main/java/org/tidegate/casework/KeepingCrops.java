package org.tidegate.casework;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tidegate.examination.picture.CassetteCrop;
import org.tidegate.store.StoredMessage;
import org.tidegate.store.Tx;
import org.tidegate.work.MessageId;
import org.tidegate.work.UserId;

/** Records the cassettes of one message by themselves, and says of which none is kept. */
final class KeepingCrops {

    private KeepingCrops() {}

    /**
     * Of a message that was forgotten while it was looked into, nothing is kept.
     *
     * @return names of the sealed bytes that are not needed
     */
    static List<String> keep(Tx tx, MessageId message, List<CropVault.Sealed> sealed, List<CassetteCrop> all) {
        boolean there =
                tx.messages().find(message).flatMap(StoredMessage::wrappedKey).isPresent();
        List<String> spare = new ArrayList<>();
        for (CropVault.Sealed s : sealed) {
            if (there && tx.crops().insert(message, s.crop())) {
                Map<String, String> hash = Map.of("hash", s.crop().saltedHash());
                tx.record("cassette-kept", UserId.DAEMON, List.of(), place(message, s.cut(), hash));
            } else {
                spare.add(s.crop().blob());
            }
        }
        if (there) {
            all.forEach(c -> withheld(tx, message, c));
        }
        return spare;
    }

    private static void withheld(Tx tx, MessageId message, CassetteCrop crop) {
        if (crop instanceof CassetteCrop.Withheld w) {
            List<String> why = List.of(w.why().code());
            tx.record("cassette-not-kept", UserId.DAEMON, why, place(message, w, Map.of()));
        }
    }

    /** Numbers count from 1: people read them. */
    private static Map<String, String> place(MessageId message, CassetteCrop crop, Map<String, String> more) {
        Map<String, String> references = new TreeMap<>(more);
        references.put("message", Long.toString(message.value()));
        references.put("picture", Integer.toString(crop.picture() + 1));
        references.put("cassette", Integer.toString(crop.cassette() + 1));
        return references;
    }
}
