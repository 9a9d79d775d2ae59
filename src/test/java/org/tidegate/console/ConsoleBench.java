package org.tidegate.console;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tidegate.booking.BookReader;
import org.tidegate.booking.BookResult;
import org.tidegate.casework.Desk;
import org.tidegate.casework.DeskConfig;
import org.tidegate.rules.Rules;
import org.tidegate.work.Role;
import org.tidegate.work.UserId;

/**
 * Median times of the queue and of a submission's page with 100,000 submissions stored, 2,000 of them held. Not a unit test; run it by
 * {@code java -cp target/test-classes:target/classes:… org.tidegate.console.ConsoleBench [held] [stored]}.
 */
final class ConsoleBench {

    private static final Instant NOW = Instant.parse("2026-05-04T08:40:00Z");

    private ConsoleBench() {}

    public static void main(String[] arguments) throws Exception {
        int held = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 2_000;
        int stored = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 100_000;
        Path data = Files.createTempDirectory("tidegate-bench");
        Rules rules = Rules.bundled();
        Clock clock = Clock.fixed(NOW, ZoneOffset.UTC);
        try (Desk desk = Desk.open(DeskConfig.embedded(data, rules, clock))) {
            hold(desk, data, held);
            close(data, held, stored);
            Morning.person(desk, "anna", Set.of(Role.OPERATOR));
            try (ConsoleServer console = ConsoleServer.start("127.0.0.1", 0, desk, rules, clock)) {
                Visitor anna = Visitor.at(console.address());
                anna.signIn("anna", Morning.PASSWORD);
                System.out.printf(
                        "%d held of %d stored%n", desk.casebook().queue(NOW).size(), stored);
                System.out.printf("queue, first look     %4d ms%n", time(anna, "queue"));
                System.out.printf("queue                 %4d ms median%n", median(anna, "queue"));
                System.out.printf("queue, page 20        %4d ms median%n", median(anna, "queue?page=20"));
                System.out.printf("queue, searched       %4d ms median%n", median(anna, "queue?words=fam1999"));
                System.out.printf("a submission          %4d ms median%n", median(anna, "submissions/1"));
            }
        }
    }

    private static long median(Visitor visitor, String path) throws Exception {
        List<Long> all = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            all.add(time(visitor, path));
        }
        List<Long> warm = new ArrayList<>(all.subList(10, all.size()));
        Collections.sort(warm);
        return warm.get(warm.size() / 2);
    }

    private static long time(Visitor visitor, String path) throws Exception {
        long start = System.nanoTime();
        if (visitor.get(path).statusCode() != 200) {
            throw new IllegalStateException(path + " cannot be shown");
        }
        return (System.nanoTime() - start) / 1_000_000;
    }

    /** Letters without their photo, each of a person of his own. */
    private static void hold(Desk desk, Path data, int count) throws Exception {
        StringBuilder book = new StringBuilder(
                "ref,given_name,family_name,date_of_birth,email,clinic,slot_start,slot_end,kit,lot\n");
        for (int i = 0; i < count; i++) {
            book.append(
                    "SB-%04d,%s,%s,1980-01-01,p%d@tarnpost.example,QUAY,2026-05-04T08:45:00+01:00,2026-05-04T09:00:00+01:00,SKERRY-20,SK2605A\n"
                            .formatted(i, name("Giv", i), name("Fam", i), i));
        }
        Path csv = Files.writeString(data.resolve("book.csv"), book);
        desk.books().replace(((BookResult.Read) BookReader.read(csv)).book(), UserId.DAEMON);
        for (int i = 0; i < count; i++) {
            String mail = """
                    Received: from out.tarnpost.example (out.tarnpost.example [192.0.2.7]) by mx.skarrasound.example; Mon, 4 May 2026 09:20:00 +0100
                    From: %s %s <p%d@tarnpost.example>
                    To: intake@skarrasound.example
                    Subject: %s %s, 08:50, QUAY
                    Date: Mon, 4 May 2026 09:19:50 +0100
                    Message-ID: <b%d@tarnpost.example>

                    Here it is.
                    """.formatted(name("Giv", i), name("Fam", i), i, name("Giv", i), name("Fam", i), i);
            desk.intake().take(mail.replace("\n", "\r\n").getBytes(StandardCharsets.US_ASCII), Optional.empty());
        }
        desk.worker().drain();
    }

    /** Names that differ by more than a letter. */
    private static String name(String start, int i) {
        String letters = "aeioubdfgklmnprstvz";
        StringBuilder name = new StringBuilder(start);
        for (int rest = i * 7919 + 13; rest > 0; rest /= letters.length()) {
            name.append(letters.charAt(rest % letters.length()));
        }
        return name.toString();
    }

    /** Closed ones beside them, as rows: nothing of them is opened by these pages. */
    private static void close(Path data, int from, int until) throws Exception {
        Path file;
        try (Stream<Path> files = Files.walk(data)) {
            file = files.filter(
                            f -> f.toString().endsWith(".db") || f.toString().endsWith(".sqlite"))
                    .findFirst()
                    .orElseThrow();
        }
        try (Connection c = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement s = c.createStatement()) {
            c.setAutoCommit(false);
            String numbers = "WITH RECURSIVE n(i) AS (SELECT %d UNION ALL SELECT i + 1 FROM n WHERE i < %d) "
                    .formatted(1_000_000 + from, 999_999 + until);
            s.executeUpdate("INSERT INTO messages (id, mark, blob, salted_hash, size, taken, submission) " + numbers
                    + "SELECT i, 'm' || i, 'b' || i, 'h', 1, 0, i FROM n");
            s.executeUpdate("INSERT INTO submissions (id, state, test, urgent, arrived, due, assessment, version) "
                    + numbers + "SELECT i, 'closed', 'SC-' || i, 0, 0, 0, 1, 1 FROM n");
            c.commit();
        }
    }
}
