package org.tidegate.casework;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tidegate.mailbox.Sighting;
import org.tidegate.rules.Rules;
import org.tidegate.store.StoredMessage;
import org.tidegate.vault.LossyLayer;

/**
 * The power goes at each commit boundary and at each step of writing a file; what was not synced is gone. The database keeps its
 * own promise on the real disk (`synchronous=FULL`); here it is whether it ever points to bytes that did not last.
 */
class PowerCutTest {

    private static final Rules RULES = Rules.bundled();
    private static final Instant MORNING = Instant.parse("2026-05-04T06:30:00Z");
    private static final int MESSAGES = 12;

    @TempDir
    Path folder;

    private final LossyLayer disk = new LossyLayer();
    private final List<byte[]> mailbox = new ArrayList<>();
    private final Set<Integer> marked = new HashSet<>();
    private int runs;

    PowerCutTest() {
        for (int i = 0; i < MESSAGES; i++) {
            mailbox.add(("From: crew" + i + "@tarnpost.example\r\nSubject: Crew Number" + i
                            + " 07:02 QUAY\r\n\r\nHere.\r\n")
                    .getBytes(StandardCharsets.US_ASCII));
        }
    }

    /** Not an exception that the program could handle: nothing of it runs any more. */
    private static final class PowerCut extends Error {
        private static final long serialVersionUID = 1L;
    }

    @ParameterizedTest
    @EnumSource(Milestones.Boundary.class)
    void nothingIsLostAtAnyBoundary(Milestones.Boundary boundary) throws IOException {
        for (int nth = 1; nth <= 4; nth++) {
            int[] left = {nth};
            run(now -> {
                if (now == boundary && --left[0] == 0) {
                    throw new PowerCut();
                }
            });
            assertThat(left[0]).as("%s was not reached", boundary).isZero();
        }
        run(Milestones.NONE);
        assertWhole();
    }

    @Test
    void nothingIsLostAtAnyStepOfWritingAFile() throws IOException {
        for (int steps = 0; steps < 40; steps++) {
            disk.stopAfter(steps);
            run(Milestones.NONE);
        }
        run(Milestones.NONE);
        assertWhole();
    }

    /** The test of the test: had the program forgotten a sync, it would show. */
    @ParameterizedTest
    @EnumSource(
            value = LossyLayer.Sync.class,
            names = {"NO_FILES", "NO_FOLDERS"})
    void aForgottenSyncLosesMessages(LossyLayer.Sync kind) throws IOException {
        run(boundary -> {
            throw new PowerCut();
        });
        disk.heed(kind);
        run(Milestones.NONE);
        assertThat(marked).hasSize(MESSAGES);
        try (Desk desk = open(Milestones.NONE)) {
            assertThat(stored(desk)).as("messages that can still be opened").isEmpty();
        }
    }

    /** One life of the program: takes what is not marked, marks it, examines; then the power goes. */
    private void run(Milestones milestones) {
        runs++;
        try (Desk desk = open(milestones)) {
            desk.takeUpAgain();
            for (int uid = 0; uid < mailbox.size(); uid++) {
                if (!marked.contains(uid)) {
                    desk.intake().take(new Sighting("intake", "INBOX", 1, uid, Optional.empty()), mailbox.get(uid));
                    marked.add(uid);
                }
            }
            desk.worker().drain();
        } catch (PowerCut | IOException | RuntimeException e) {
            // The machine stopped.
        }
        disk.crash();
    }

    private Desk open(Milestones milestones) throws IOException {
        Clock clock = Clock.fixed(MORNING.plus(Duration.ofMinutes(runs)), ZoneOffset.UTC);
        return Desk.open(DeskConfig.embedded(folder.toAbsolutePath(), RULES, clock)
                .withFiles(disk)
                .withMilestones(milestones));
    }

    private void assertWhole() throws IOException {
        assertThat(marked).hasSize(MESSAGES);
        runs += 60;
        try (Desk desk = open(Milestones.NONE)) {
            desk.worker().drain();
            Kept.examined(desk);
            Kept.whole(desk, mailbox);
        }
    }

    /** Every message whose bytes can be opened. */
    private static List<String> stored(Desk desk) {
        List<String> texts = new ArrayList<>();
        for (StoredMessage m : Kept.messages(desk)) {
            try {
                texts.add(Arrays.toString(desk.vault().raw(m).orElseThrow()));
            } catch (RuntimeException e) {
                // Lost; the caller counts.
            }
        }
        return texts;
    }
}
