package org.tidegate.casework;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.tidegate.store.StoreException;

/**
 * Lets threads that arrive together share one commit: whoever gets the turn commits for all who wait. Each call returns when
 * its own item is committed, or fails with the group.
 */
final class CommitGroup<T, R> {

    private static final int MOST = 200;

    private final ConcurrentLinkedQueue<Waiting<T, R>> queue = new ConcurrentLinkedQueue<>();
    private final ReentrantLock turn = new ReentrantLock(true);
    private final Function<List<T>, List<R>> commit;

    private static final class Waiting<T, R> {
        private final T item;
        private @Nullable R result;
        private @Nullable RuntimeException failure;

        Waiting(T item) {
            this.item = item;
        }

        boolean open() {
            return result == null && failure == null;
        }
    }

    /** @param commit commits all items in one transaction; a result for each, in their order */
    CommitGroup(Function<List<T>, List<R>> commit) {
        this.commit = commit;
    }

    R submit(T item) {
        Waiting<T, R> mine = new Waiting<>(item);
        queue.add(mine);
        turn.lock();
        try {
            while (mine.open()) {
                commitTogether();
            }
        } finally {
            turn.unlock();
        }
        RuntimeException failure = mine.failure;
        if (failure != null) {
            throw failure instanceof StoreException
                    ? new StoreException(String.valueOf(failure.getMessage()), failure)
                    : new IllegalStateException("The commit failed: " + failure.getMessage(), failure);
        }
        return Optional.ofNullable(mine.result).orElseThrow();
    }

    private void commitTogether() {
        List<Waiting<T, R>> group = new ArrayList<>();
        for (Waiting<T, R> next = queue.poll(); next != null; next = group.size() < MOST ? queue.poll() : null) {
            group.add(next);
        }
        try {
            List<R> results = commit.apply(group.stream().map(w -> w.item).toList());
            for (int i = 0; i < group.size(); i++) {
                group.get(i).result = results.get(i);
            }
        } catch (RuntimeException e) {
            group.forEach(w -> w.failure = e);
        }
    }
}
