package org.tidegate.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.tidegate.casework.Desk;
import org.tidegate.casework.ExaminationWorker;
import org.tidegate.casework.Forgetting;
import org.tidegate.casework.Sending;
import org.tidegate.casework.Unattended;
import org.tidegate.casework.Waking;
import org.tidegate.mailbox.ImapAccount;
import org.tidegate.mailbox.ImapWatcher;
import org.tidegate.mailbox.MailboxEvent;
import org.tidegate.mailbox.Outgoing;
import org.tidegate.mailbox.Pause;
import org.tidegate.report.HandoverMail;
import org.tidegate.store.StoreException;
import org.tidegate.work.PolicyAct;
import org.tidegate.work.SubmissionId;

/** Takes mail in and examines it until it is stopped: one watcher, as many workers as there are cores. */
final class Daemon implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(Daemon.class);
    private static final long IDLE_MILLIS = 200;
    private static final long FAREWELL_MILLIS = 5_000;
    private static final long SEND_MILLIS = 1_000;
    private static final int CORES = Runtime.getRuntime().availableProcessors();

    private final Desk desk;
    private final ImapWatcher watcher;
    private final List<Thread> workers = new ArrayList<>();
    private Optional<Thread> watching = Optional.empty();
    private final AtomicBoolean stopped = new AtomicBoolean();
    private final Consumer<Throwable> fatal;

    /** @param fatal told when the daemon cannot go on */
    Daemon(Desk desk, ImapAccount account, Consumer<Throwable> fatal) {
        this.desk = desk;
        this.fatal = fatal;
        this.watcher = new ImapWatcher(account, desk.intake(), Daemon::log, Pause.sleeping());
    }

    private static void log(MailboxEvent event) {
        LOG.info("{}", event.words());
    }

    /** Takes in what is in the mailbox now. @return how many messages were new */
    int take() throws InterruptedException {
        return watcher.drain();
    }

    /** Examines until nothing is left to do now, on every core. @return how many pieces wait for a later time */
    long examine() throws InterruptedException {
        takeUpAgain();
        ExecutorService pool = Executors.newFixedThreadPool(CORES);
        try {
            List<Callable<Integer>> drains = new ArrayList<>();
            for (int i = 0; i < CORES; i++) {
                drains.add(desk.worker()::drain);
            }
            for (Future<Integer> done : pool.invokeAll(drains)) {
                done.get();
            }
        } catch (ExecutionException e) {
            throw e.getCause() instanceof StoreException s ? s : new IllegalStateException(e.getCause());
        } finally {
            pool.shutdownNow();
        }
        return desk.store().<Long>read(tx -> tx.work().waiting());
    }

    private void takeUpAgain() {
        int freed = desk.takeUpAgain();
        if (freed > 0) {
            LOG.info("The last run ended in the middle of {} examinations; they are taken up again.", freed);
        }
    }

    /** @param examining false leaves the examination to another process on the same store */
    void start(boolean examining) {
        if (examining) {
            takeUpAgain();
        }
        for (int i = 0; examining && i < CORES; i++) {
            ExaminationWorker worker = desk.worker();
            workers.add(run("examine-" + i, () -> repeat(IDLE_MILLIS, worker::work)));
        }
        Forgetting forgetting = desk.forgetting();
        workers.add(run("forget", () -> repeat(SEND_MILLIS, forgetting::work)));
        watching = Optional.of(run("watch", this::watch));
    }

    /** Sends letters through this, answers by itself what the rules let it, and hands over, until the daemon is closed. */
    void sendThrough(Outgoing outgoing, HandoverMail handover) {
        Sending sending = desk.sending(outgoing);
        int uncertain = sending.markUnfinished(desk.sendingBrokenOff());
        if (uncertain > 0) {
            LOG.warn(
                    "The last run ended while {} letters went out: see in the outbox whether they arrived.", uncertain);
        }
        workers.add(run("send", () -> repeat(SEND_MILLIS, () -> send(sending))));
        Unattended unattended = desk.unattended();
        Waking waking = desk.waking();
        workers.add(run(
                "answer", () -> repeat(SEND_MILLIS, () -> wake(waking) || answer(unattended) || handover.work())));
    }

    /** Answers by itself and sends, until nothing is left to do now. */
    void answer(Outgoing outgoing, HandoverMail handover) {
        Unattended unattended = desk.unattended();
        Waking waking = desk.waking();
        Sending sending = desk.sending(outgoing);
        boolean more = true;
        while (more) {
            more = wake(waking) || answer(unattended) || handover.work() || send(sending);
        }
    }

    private static boolean send(Sending sending) {
        Optional<Sending.Step> step = sending.work();
        step.ifPresent(Daemon::log);
        return step.isPresent();
    }

    private static boolean answer(Unattended unattended) {
        List<PolicyAct> acts = unattended.work();
        acts.forEach(Daemon::log);
        return !acts.isEmpty();
    }

    private static boolean wake(Waking waking) {
        List<SubmissionId> told = waking.work();
        told.forEach(id -> LOG.warn("The on-call person is told about {}.", id));
        return !told.isEmpty();
    }

    private static void log(PolicyAct act) {
        LOG.info("By itself: {} {} {}", act.submission(), act.act().code(), String.join(" ", act.codes()));
    }

    /** Does a step again and again, with a pause where there was nothing to do, until the daemon is stopped. */
    private void repeat(long pauseMillis, BooleanSupplier step) {
        try {
            while (!stopped.get()) {
                if (!step.getAsBoolean()) {
                    Thread.sleep(pauseMillis);
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (RuntimeException | Error e) {
            fail(e);
        }
    }

    private static void log(Sending.Step step) {
        LOG.info(
                "Letter {} ({}): {}{}",
                step.letter().id(),
                step.letter().kind().code(),
                step.state().code(),
                step.words().map(w -> ", " + w).orElse(""));
    }

    private Thread run(String name, Runnable body) {
        Thread thread = new Thread(body, name);
        thread.start();
        return thread;
    }

    private void watch() {
        try {
            watcher.watch();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (RuntimeException | Error e) {
            fail(e);
        }
    }

    /** What breaks while it is being stopped is of no concern. */
    private void fail(Throwable e) {
        if (!stopped.get()) {
            fatal.accept(e);
        }
    }

    /** Lets everybody finish what is in hand, so that the store can be closed. */
    @Override
    public void close() {
        stopped.set(true);
        watcher.close();
        watching.ifPresent(Thread::interrupt);
        try {
            for (Thread worker : workers) {
                worker.join(FAREWELL_MILLIS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        workers.forEach(Thread::interrupt);
    }
}
