package org.tidegate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidegate.casework.Desk;
import org.tidegate.casework.DeskConfig;
import org.tidegate.casework.Kept;
import org.tidegate.casework.Milestones;
import org.tidegate.rules.Rules;

/**
 * {@code watch} as a process of its own, killed by SIGKILL again and again over one data folder and one mailbox. Each boundary is
 * reached three times and twenty kills fall at random with {@code mvn -Dfast test -Dtest=CrashTest -Dsimulation.share=1}; an
 * ordinary run reaches each boundary once, with three at random. What was killed is counted in the output.
 */
class CrashTest {

    private static final double SHARE = Double.parseDouble(System.getProperty("simulation.share", "0.1"));
    private static final int AT_EACH_BOUNDARY = SHARE < 1 ? 1 : 3;
    private static final int AT_RANDOM = Math.max(3, (int) (20 * SHARE));
    private static final String HEAP = "256m";
    private static final int MESSAGES = 200;
    private static final int MORE_BEFORE_EACH_KILL = 5;
    private static final int LONGEST_LIFE_MILLIS = 900;

    @TempDir
    Path folder;

    private final CrashMail mail = new CrashMail();
    private final Map<String, Integer> kills = new TreeMap<>();
    private final Random random = new Random(9);
    private MarkingTap tap;

    @BeforeEach
    void start() throws Exception {
        tap = new MarkingTap(mail.port());
        mail.deliver(MESSAGES);
    }

    @AfterEach
    void stop() throws Exception {
        tap.close();
        mail.close();
    }

    @Test
    void killedAnywhereEachMessageIsStoredOnceAndMarked() throws Exception {
        for (int round = 0; round < AT_EACH_BOUNDARY; round++) {
            for (Milestones.Boundary boundary : Milestones.Boundary.values()) {
                killAt(boundary);
            }
            killAtMarking("MARKING", MarkingTap.Stop.BEFORE);
            killAtMarking("MARKED", MarkingTap.Stop.AFTER);
        }
        for (int i = 0; i < AT_RANDOM; i++) {
            killAtRandom(i % 4 == 3);
        }
        finish();
        System.out.println("Crash test: killed by SIGKILL at " + kills + "; "
                + mail.delivered().size()
                + " messages, each stored once, byte for byte, and marked; the ledger is whole.");
    }

    private void killAt(Milestones.Boundary boundary) throws Exception {
        mail.deliver(MORE_BEFORE_EACH_KILL);
        tap.arm(MarkingTap.Stop.NEVER);
        // A batch is taken by one commit.
        int nth = boundary == Milestones.Boundary.TAKEN ? 1 : 1 + random.nextInt(MORE_BEFORE_EACH_KILL);
        WatchChild child = WatchChild.start(log(), HEAP, HaltingWatch.class, data(), tap.port(), boundary, nth);
        assertThat(child.says(HaltingWatch.REACHED))
                .as("%s: %s", boundary, logged())
                .isTrue();
        killed(boundary.name(), child);
    }

    private void killAtMarking(String name, MarkingTap.Stop stop) throws Exception {
        mail.deliver(MORE_BEFORE_EACH_KILL);
        tap.arm(stop);
        WatchChild child = watch();
        assertThat(tap.awaitStop(300)).as("%s: %s", name, logged()).isTrue();
        killed(name, child);
    }

    private void killAtRandom(boolean fromTheStart) throws Exception {
        mail.deliver(MORE_BEFORE_EACH_KILL);
        tap.arm(MarkingTap.Stop.NEVER);
        WatchChild child = watch();
        if (!fromTheStart) {
            assertThat(tap.awaitClient(300)).as(logged()).isTrue();
        }
        Thread.sleep(random.nextInt(LONGEST_LIFE_MILLIS));
        killed("random", child);
    }

    private void killed(String name, WatchChild child) throws Exception {
        assertThat(child.ended()).as("%s: ended by itself: %s", name, logged()).isFalse();
        assertThat(child.kill()).isEqualTo(WatchChild.KILLED);
        kills.merge(name, 1, Integer::sum);
    }

    private WatchChild watch() throws Exception {
        return WatchChild.start(log(), HEAP, Main.class, watching().toArray());
    }

    private List<Object> watching() throws Exception {
        return new ArrayList<>(List.of(
                "watch",
                "--no-console",
                "--data",
                data(),
                "--imap-host",
                "127.0.0.1",
                "--imap-port",
                tap.port(),
                "--imap-tls",
                "plain",
                "--imap-user",
                CrashMail.USER,
                "--imap-password-file",
                secret()));
    }

    private void finish() throws Exception {
        tap.arm(MarkingTap.Stop.NEVER);
        List<Object> words = watching();
        words.set(1, "--drain");
        WatchChild last = WatchChild.start(log(), HEAP, Main.class, words.toArray());
        assertThat(last.says("Taken: ")).as(logged()).isTrue();
        assertThat(last.code()).as(logged()).isZero();
        assertThat(mail.marked()).isEqualTo(mail.delivered().size());
        Clock later = Clock.offset(Clock.systemUTC(), Duration.ofHours(1));
        try (Desk desk = Desk.open(DeskConfig.embedded(data(), Rules.bundled(), later))) {
            desk.worker().drain();
            Kept.examined(desk);
            Kept.whole(desk, mail.delivered());
            // The mailbox was never numbered anew: one sighting of each.
            Kept.messages(desk)
                    .forEach(m -> assertThat(
                                    desk.store().<Long>read(tx -> tx.messages().sightings(m.id())))
                            .isEqualTo(1));
        }
        Ran audit = Ran.command("audit-ledger", "--data", data());
        assertThat(audit.out()).as(audit.err()).contains("The ledger is whole.");
        assertThat(audit.code()).isZero();
    }

    private Path data() {
        return folder.resolve("data");
    }

    private Path log() {
        return folder.resolve("watch.log");
    }

    private String logged() throws Exception {
        return Files.exists(log()) ? Files.readString(log()) : "";
    }

    private Path secret() throws Exception {
        return Files.writeString(folder.resolve("secret"), CrashMail.PASSWORD);
    }
}
