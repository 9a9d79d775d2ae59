package org.tidegate.mailbox;

import jakarta.mail.MessagingException;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
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

    int take(List<Batch.Announced> announced) throws MessagingException, InterruptedException {
        List<Batch> batches = Batch.plan(announced);
        for (Batch batch : batches) {
            (batch.isLarge() ? large : small).add(batch);
        }
        List<Future<Integer>> workers = new ArrayList<>();
        int connections = Math.min(account.connections(), batches.size());
        for (int i = 0; i < connections; i++) {
            boolean isFirst = i == 0;
            workers.add(threads.submit(() -> isFirst ? work(first, true) : workAlone()));
        }
        return sum(workers);
    }

    private int workAlone() throws MessagingException {
        if (small.isEmpty()) {
            return 0;
        }
        try (ImapLink link = ImapLink.open(account)) {
            // A folder numbered anew in between: its batches belong to the old numbers.
            return link.uidValidity() == first.uidValidity() ? work(link, false) : 0;
        } catch (MessagingException | RuntimeException e) {
            failed.set(true);
            throw e;
        }
    }

    /** Works the queue off; only one worker takes the large ones, so that memory holds one of them at a time. */
    private int work(ImapLink link, boolean alsoLarge) throws MessagingException {
        int taken = 0;
        try {
            for (Batch b = next(alsoLarge); b != null && !failed.get(); b = next(alsoLarge)) {
                taken += fetcher.take(link, b);
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
    private static int sum(List<Future<Integer>> workers) throws MessagingException, InterruptedException {
        int taken = 0;
        Throwable failure = null;
        for (Future<Integer> worker : workers) {
            try {
                taken += worker.get();
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
