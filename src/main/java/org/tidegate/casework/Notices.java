package org.tidegate.casework;

import java.time.Instant;
import java.util.Optional;
import org.tidegate.store.Store;
import org.tidegate.store.Tx;
import org.tidegate.work.LetterKind;
import org.tidegate.work.LetterText;

/** Mail among ourselves that is about no single submission. */
public final class Notices {

    private final Store store;
    private final Acting acting;
    private final LetterDesk letters;

    Notices(Store store, Acting acting, LetterDesk letters) {
        this.store = store;
        this.acting = acting;
        this.letters = letters;
    }

    public boolean writtenSince(LetterKind kind, Instant since) {
        return store.read(tx -> written(tx, kind, since));
    }

    /** Puts it into the outbox unless one of its kind was written since then, on whatever machine. @return whether it did */
    public boolean once(LetterKind kind, Instant since, LetterText text) {
        return acting.<Boolean>inTurn(tx -> {
            if (written(tx, kind, since)) {
                return false;
            }
            letters.queue(tx, letters.internal(Optional.empty(), kind, text, kind.code(), acting.now()));
            return true;
        });
    }

    private static boolean written(Tx tx, LetterKind kind, Instant since) {
        return tx.outbox().countOf(kind, since) > 0;
    }
}
