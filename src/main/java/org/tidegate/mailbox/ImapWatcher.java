package org.tidegate.mailbox;

import jakarta.mail.AuthenticationFailedException;
import jakarta.mail.MessagingException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import javax.net.ssl.SSLException;
import org.eclipse.angus.mail.imap.protocol.RFC822SIZE;
import org.eclipse.angus.mail.imap.protocol.UID;
import org.jspecify.annotations.Nullable;

/**
 * Takes everything out of one mailbox that is not marked yet, and keeps watching it. A message is marked only after the intake
 * has returned, so a crash or a cut at any moment means at most that it is offered again.
 */
public final class ImapWatcher implements AutoCloseable {

    private static final int LOGIN_TRIES = 3;
    private static final int DRAIN_TRIES = 6;

    private final ImapAccount account;
    private final Consumer<MailboxEvent> events;
    private final Pause pause;
    private final Fetcher fetcher;
    private final Backoff backoff = new Backoff();
    private final AtomicInteger fresh = new AtomicInteger();
    private final ExecutorService fetchers;
    private final ScheduledExecutorService waker;
    private int refusals;
    private long lastValidity;
    private volatile boolean stopped;
    private volatile @Nullable ImapLink watching;

    public ImapWatcher(ImapAccount account, Intake intake, Consumer<MailboxEvent> events, Pause pause) {
        this.account = account;
        this.events = event -> {
            fresh.addAndGet(event instanceof MailboxEvent.Taken t && t.receipt() == Intake.Receipt.NEW ? 1 : 0);
            events.accept(event);
        };
        this.pause = pause;
        this.fetcher = new Fetcher(account, intake, this.events);
        this.fetchers = Executors.newFixedThreadPool(account.connections(), daemon("fetch-" + account.name()));
        this.waker = Executors.newSingleThreadScheduledExecutor(daemon("wake-" + account.name()));
    }

    private static ThreadFactory daemon(String name) {
        return work -> {
            Thread thread = new Thread(work, name);
            thread.setDaemon(true);
            return thread;
        };
    }

    /**
     * Takes until nothing unmarked is left, then returns how many messages were new, over all connections.
     *
     * @throws MailboxException where the server cannot be reached or refuses, after several tries
     */
    public int drain() throws InterruptedException {
        int before = fresh.get();
        boolean emptied = false;
        while (!stopped && !emptied) {
            try (ImapLink link = connect()) {
                takeAll(link);
                emptied = true;
            } catch (MessagingException e) {
                recover(e);
                if (backoff.failures() >= DRAIN_TRIES) {
                    throw new MailboxException(cannotReach(e), e);
                }
            }
        }
        return fresh.get() - before;
    }

    /** Watches until {@link #close()} or an interrupt. A lost connection is made again with growing waits. */
    public void watch() throws InterruptedException {
        while (!stopped) {
            try (ImapLink link = connect()) {
                while (!stopped) {
                    takeAll(link);
                    await(link);
                }
            } catch (MessagingException e) {
                if (!stopped) {
                    recover(e);
                }
            }
        }
    }

    @Override
    public void close() {
        stopped = true;
        ImapLink link = watching;
        if (link != null) {
            link.close();
        }
        fetchers.shutdown();
        waker.shutdownNow();
    }

    private ImapLink connect() throws MessagingException {
        ImapLink link = ImapLink.open(account);
        watching = link;
        refusals = 0;
        if (lastValidity != 0 && lastValidity != link.uidValidity()) {
            events.accept(new MailboxEvent.ValidityChanged(account.name(), lastValidity, link.uidValidity()));
        }
        lastValidity = link.uidValidity();
        events.accept(new MailboxEvent.Connected(account.name(), account.folder(), lastValidity));
        return link;
    }

    /** Passes over the folder until it holds nothing unmarked but what the server does not hand out. */
    private void takeAll(ImapLink link) throws MessagingException, InterruptedException {
        // This connection may learn late of the marks that others set.
        Set<Long> taken = new HashSet<>();
        Set<Long> withheld = new HashSet<>();
        while (!stopped) {
            List<Long> waiting = link.unmarked();
            waiting.removeAll(withheld);
            waiting.removeAll(taken);
            if (waiting.isEmpty()) {
                break;
            }
            List<Batch.Announced> announced = announced(link, waiting);
            List<Long> tooLarge = tooLarge(announced);
            waiting.removeAll(tooLarge);
            withheld.addAll(tooLarge);
            announced.removeIf(a -> tooLarge.contains(a.uid()));
            taken.addAll(new Pass(account, link, fetcher, fetchers).take(announced));
            backoff.succeeded();
            waiting.removeAll(taken);
            withheld.addAll(stillThere(link, waiting));
        }
    }

    private List<Long> tooLarge(List<Batch.Announced> announced) {
        List<Batch.Announced> large =
                announced.stream().filter(a -> a.size() > Batch.MOST_KEPT).toList();
        large.forEach(a -> events.accept(new MailboxEvent.Skipped(
                account.name(),
                a.uid(),
                "it has " + a.size() + " bytes, more than the " + Batch.MOST_KEPT
                        + " that are kept; it stays in the folder, unmarked, for a person to look at.")));
        return large.stream().map(Batch.Announced::uid).toList();
    }

    private List<Long> stillThere(ImapLink link, List<Long> offered) throws MessagingException {
        Set<Long> before = new HashSet<>(offered);
        List<Long> withheld = link.unmarked().stream().filter(before::contains).toList();
        for (long uid : withheld) {
            events.accept(new MailboxEvent.Skipped(account.name(), uid, "the server does not hand it out."));
        }
        return withheld;
    }

    private static List<Batch.Announced> announced(ImapLink link, List<Long> uids) throws MessagingException {
        List<Batch.Announced> announced = new ArrayList<>();
        for (var response : link.fetch(UidSet.of(uids), "RFC822.SIZE")) {
            UID uid = response.getItem(UID.class);
            RFC822SIZE size = response.getItem(RFC822SIZE.class);
            if (uid != null && size != null) {
                announced.add(new Batch.Announced(uid.uid, Math.max(0, size.size)));
            }
        }
        announced.sort(Comparator.comparingLong(Batch.Announced::uid));
        return announced;
    }

    private void await(ImapLink link) throws MessagingException, InterruptedException {
        if (stopped) {
            return;
        }
        if (!link.canIdle()) {
            pause.of(account.poll());
            return;
        }
        ScheduledFuture<?> wake = waker.schedule(link::wake, account.poll().toMillis(), TimeUnit.MILLISECONDS);
        try {
            link.idle();
        } finally {
            wake.cancel(false);
        }
    }

    private void recover(MessagingException e) throws InterruptedException {
        if (e instanceof AuthenticationFailedException && ++refusals >= LOGIN_TRIES) {
            throw new MailboxException(
                    "The server " + account.server() + " refused the login of "
                            + account.login().user() + " "
                            + LOGIN_TRIES + " times: check user name and password or token of account "
                            + account.name() + ".",
                    e);
        }
        if (causedByCertificate(e) && lastValidity == 0) {
            throw new MailboxException(
                    "The server " + account.server()
                            + " shows a certificate that is not trusted or not its own: check host name and certificate of account "
                            + account.name() + ".",
                    e);
        }
        Duration wait = backoff.failed();
        events.accept(new MailboxEvent.Lost(account.name(), reason(e), wait));
        pause.of(wait);
    }

    private String cannotReach(MessagingException e) {
        return "The mailbox " + account.name() + " at " + account.server() + " cannot be worked with: " + reason(e)
                + ". Check host, port and network.";
    }

    private static String reason(MessagingException e) {
        String words = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
        return words.lines().findFirst().orElse(words).strip();
    }

    private static boolean causedByCertificate(Throwable e) {
        for (Throwable t = e; t != null; t = t.getCause()) {
            if (t instanceof SSLException) {
                return true;
            }
        }
        return false;
    }
}
