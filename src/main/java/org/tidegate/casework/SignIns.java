package org.tidegate.casework;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidegate.store.Store;
import org.tidegate.work.User;
import org.tidegate.work.UserId;

/** Who comes in, and who tried: every sign-in is in the ledger. A name that nobody bears is never written down. */
public final class SignIns {

    private static final UserId NOBODY = new UserId("nobody");

    private final Store store;

    SignIns(Store store) {
        this.store = store;
    }

    public Optional<User> user(UserId id) {
        return store.read(tx -> tx.users().find(id));
    }

    /** @param how {@code password} or {@code openid} */
    public void succeeded(UserId who, String how) {
        record("signed-in", who, how);
    }

    public void failed(UserId claimed, String how) {
        record("sign-in-failed", user(claimed).map(User::id).orElse(NOBODY), how);
    }

    /** Where no name was claimed. */
    public void failedNameless(String how) {
        record("sign-in-failed", NOBODY, how);
    }

    public void left(UserId who) {
        record("signed-out", who, "person");
    }

    private void record(String event, UserId who, String code) {
        store.write(tx -> {
            tx.record(event, who, List.of(code), Map.of());
            return true;
        });
    }
}
