package org.tidegate.casework;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tidegate.booking.AppointmentBook;
import org.tidegate.booking.BookReader;
import org.tidegate.booking.BookResult;
import org.tidegate.examination.Inspected;
import org.tidegate.finding.DeliveryFacts;
import org.tidegate.rules.Rules;
import org.tidegate.store.Databases;
import org.tidegate.store.StoreLocation;
import org.tidegate.store.StoredAssessment;
import org.tidegate.vault.MasterKey;
import org.tidegate.work.Submission;
import org.tidegate.work.UserId;

/**
 * The sample's morning with its photos, supplements and reused pictures, examined by the workers of two machines at once, each
 * message taking its own seeded while, some failing at first: the verdicts are those of one worker who takes one at a time.
 */
class ManyWorkersTest {

    private static final Rules RULES = Rules.bundled();
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC);
    private static final Path SAMPLE = Path.of("sample-mailbox");
    private static final int MACHINES = 2;
    private static final int WORKERS_EACH = 2;
    private static final int LONGEST_MILLIS = 40;

    /** Inspecting is pure, so it is done once a message for all rounds: the rounds share one master key. */
    private static final Map<String, Inspected> INSPECTED = new ConcurrentHashMap<>();

    @TempDir
    Path folder;

    @ParameterizedTest
    @EnumSource
    void allEndInTheSameVerdicts(Databases database) throws Exception {
        List<byte[]> messages = messages();
        List<String> expected = oneByOne(database, messages);
        assertThat(expected).hasSizeGreaterThan(30);
        int rounds = Math.max(2, (int) (20 * Double.parseDouble(System.getProperty("simulation.share", "0.1"))));
        for (int seed = 1; seed <= rounds; seed++) {
            assertThat(allAtOnce(database, messages, seed)).as("seed %d", seed).isEqualTo(expected);
        }
    }

    private List<String> oneByOne(Databases database, List<byte[]> messages) throws Exception {
        Path data = data("in-order");
        try (Desk desk = open(data, database.fresh(data), (raw, facts) -> inspected(raw, facts))) {
            desk.books().replace(book(), new UserId("ada"));
            for (byte[] raw : messages) {
                desk.intake().take(raw, Optional.empty());
                desk.worker().drain();
            }
            return standing(desk);
        }
    }

    private List<String> allAtOnce(Databases database, List<byte[]> messages, int seed) throws Exception {
        Path data = data("seed-" + seed);
        StoreLocation location = database.fresh(data);
        Inspection slow = (raw, facts) -> {
            pause(new Random(seed * 31L + Arrays.hashCode(raw)).nextInt(LONGEST_MILLIS));
            return inspected(raw, facts);
        };
        try (Desk one = open(data, location, slow);
                Desk other = open(data, location, slow)) {
            one.books().replace(book(), new UserId("ada"));
            examineWhileTaking(List.of(one, other), messages);
            Kept.examined(one);
            Kept.whole(one, messages);
            return standing(other);
        }
    }

    private static void examineWhileTaking(List<Desk> machines, List<byte[]> messages) throws Exception {
        AtomicBoolean taken = new AtomicBoolean();
        ExecutorService threads = Executors.newFixedThreadPool(MACHINES * WORKERS_EACH);
        try {
            List<Future<Boolean>> workers = new ArrayList<>();
            for (int i = 0; i < MACHINES * WORKERS_EACH; i++) {
                ExaminationWorker worker = machines.get(i % MACHINES).worker();
                workers.add(threads.submit(untilDone(worker, taken)));
            }
            for (int i = 0; i < messages.size(); i++) {
                machines.get(i % MACHINES).intake().take(messages.get(i), Optional.empty());
            }
            taken.set(true);
            for (Future<Boolean> worker : workers) {
                worker.get();
            }
        } finally {
            threads.shutdownNow();
        }
    }

    private static Callable<Boolean> untilDone(ExaminationWorker worker, AtomicBoolean taken) {
        return () -> {
            while (!taken.get()) {
                worker.drain();
                Thread.sleep(1);
            }
            worker.drain();
            return true;
        };
    }

    private static Inspected inspected(byte[] raw, DeliveryFacts facts) {
        return INSPECTED.computeIfAbsent(
                Arrays.toString(facts.pictureKey()) + Arrays.hashCode(raw) + ":" + raw.length,
                k -> Inspection.by(RULES).inspect(raw, facts));
    }

    private static void pause(int millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static List<String> standing(Desk desk) {
        return desk.store().read(tx -> {
            List<String> lines = new ArrayList<>();
            for (Submission s : tx.submissions().all()) {
                StoredAssessment a = tx.assessments().newest(s.id()).orElseThrow();
                lines.add(s.id() + " " + s.state() + " " + s.messages() + " " + s.test() + " " + s.due() + " "
                        + a.content());
            }
            return lines;
        });
    }

    private static Desk open(Path data, StoreLocation location, Inspection inspection) throws IOException {
        return Desk.open(DeskConfig.of(data, location, RULES, CLOCK).withInspection(inspection));
    }

    private Path data(String name) throws IOException {
        Path data = Files.createDirectories(folder.resolve(name));
        Path keys = Files.createDirectories(data.resolve("keys"));
        Files.writeString(keys.resolve(MasterKey.FILE), Base64.getEncoder().encodeToString(new byte[32]));
        return data;
    }

    private static AppointmentBook book() throws IOException {
        BookResult result = BookReader.read(SAMPLE.resolve("appointments.csv"));
        return ((BookResult.Read) result).book();
    }

    private static List<byte[]> messages() throws IOException {
        List<byte[]> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(SAMPLE)) {
            for (Path f :
                    files.filter(p -> p.toString().endsWith(".eml")).sorted().toList()) {
                all.add(Files.readAllBytes(f));
            }
        }
        return all;
    }
}
