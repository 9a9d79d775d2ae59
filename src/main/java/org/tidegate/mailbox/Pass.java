package org.tidegate.mailbox;

import jakarta.mail.MessagingException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;

/** One pass over what is unmarked: batches spread over a few connections, large messages one at a time. */
final class Pass {

    private final ImapAccount account;
    private final ImapLink first;
    private final Fetcher fetcher;
    private final ExecutorService threads;
    private final Queue<Batch> small = new ConcurrentLinkedQueue<>();
    private final Queue<Batch> large = new ConcurrentLinkedQueue<>();
    private final AtomicBoolean failed = new AtomicBoolean();

    Pass(ImapAccount account, ImapLink first, Fetcher fetcher, ExecutorService threads) {
        this.account = account;
        this.first = first;
        this.fetcher = fetcher;
        this.threads = threads;
    }

    /** @return the UIDs that were taken and marked */
    Set<Long> take(List<Batch.Announced> announced) throws MessagingException, InterruptedException {
        List<Batch> batches = Batch.plan(announced);
        for (Batch batch : batches) {
            (batch.isLarge() ? large : small).add(batch);
        }
        List<Future<List<Long>>> workers = new ArrayList<>();
        int connections = Math.min(account.connections(), batches.size());
        for (int i = 0; i < connections; i++) {
            boolean isFirst = i == 0;
            workers.add(threads.submit(() -> isFirst ? work(first, true) : workAlone()));
        }
        return together(workers);
    }

    private List<Long> workAlone() throws MessagingException {
        if (small.isEmpty()) {
            return List.of();
        }
        try (ImapLink link = ImapLink.open(account)) {
            // A folder numbered anew in between: its batches belong to the old numbers.
            return link.uidValidity() == first.uidValidity() ? work(link, false) : List.of();
        } catch (MessagingException | RuntimeException e) {
            failed.set(true);
            throw e;
        }
    }

    /** Works the queue off; only one worker takes the large ones, so that memory holds one of them at a time. */
    private List<Long> work(ImapLink link, boolean alsoLarge) throws MessagingException {
        List<Long> taken = new ArrayList<>();
        try {
            for (Batch b = next(alsoLarge); b != null && !failed.get(); b = next(alsoLarge)) {
                taken.addAll(fetcher.take(link, b));
            }
        } catch (MessagingException | RuntimeException e) {
            failed.set(true);
            throw e;
        }
        return taken;
    }

    private @Nullable Batch next(boolean alsoLarge) {
        Batch batch = alsoLarge ? large.poll() : null;
        return batch != null ? batch : small.poll();
    }

    /** Waits for all workers, then reports the first failure: nobody still works when the caller reconnects. */
    private static Set<Long> together(List<Future<List<Long>>> workers)
            throws MessagingException, InterruptedException {
        Set<Long> taken = new HashSet<>();
        Throwable failure = null;
        for (Future<List<Long>> worker : workers) {
            try {
                taken.addAll(worker.get());
            } catch (ExecutionException e) {
                failure = failure == null ? e.getCause() : failure;
            }
        }
        if (failure instanceof MessagingException m) {
            throw m;
        }
        if (failure instanceof RuntimeException r) {
            throw r;
        }
        if (failure instanceof Error r) {
            throw r;
        }
        return taken;
    }
}
