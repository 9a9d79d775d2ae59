package org.tidegate.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.tidegate.Needs;
import org.tidegate.casework.QueueRow;
import org.tidegate.work.LetterKind;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionState;

/**
 * The sample's morning as it comes in, cleared by an operator and a reader at keyboards: no pointer is moved. Prints how many
 * keys it took from opening a submission to the sent reply.
 */
@Tag("browser")
class ClearedByKeysTest {

    /** Messages that come closer to each other than this are looked at together. */
    private static final Duration TOGETHER = Duration.ofMinutes(10);

    /** How a reader decides what a letter alone does not settle; arrows from the first choice, then the reason's first letters. */
    private static final Map<String, Choice> DECISIONS = Map.of(
            "late", new Choice(2, "Not read"),
            "late-in-transit", new Choice(0, "Shown to be"),
            "not-observed", new Choice(1, "The test was"),
            "lot-expired", new Choice(1, "Kit or lot"),
            "lot-quarantined", new Choice(1, "Kit or lot"));

    private record Choice(int arrows, String reason) {}

    @TempDir
    static Path data;

    private static Morning morning;
    private static Browser operators;
    private static Browser readers;
    private static Keyboard operator;
    private static Keyboard reader;

    private final Map<String, Set<Integer>> keysToTheReply = new TreeMap<>();

    @BeforeAll
    static void start() throws Exception {
        Needs.that(Browser.installed(), "chromium and chromedriver");
        morning = Morning.early(data);
        operators = Browser.open(morning.console.address(), true);
        readers = Browser.open(morning.console.address(), true);
        operator = new Keyboard(operators);
        reader = new Keyboard(readers);
        operator.signIn("operator");
        reader.signIn("reader");
    }

    @AfterAll
    static void stop() {
        if (morning != null) {
            operators.close();
            readers.close();
            morning.close();
        }
    }

    @Test
    void theMorningIsClearedAndEveryReplyIsTwoActionsAtMost() throws Exception {
        List<Morning.Mail> mails = Morning.mails(List.of());
        for (int i = 0; i < mails.size(); i++) {
            morning.arrives(mails.get(i));
            boolean together = i + 1 < mails.size()
                    && mails.get(i + 1)
                            .arrived()
                            .isBefore(mails.get(i).arrived().plus(TOGETHER));
            if (!together) {
                morning.clock.put(mails.get(i).arrived().plusSeconds(60));
                clear(operator, this::answer);
                clear(reader, ClearedByKeysTest::readOrDecide);
            }
        }
        System.out.println("Keys from opening a held submission to the sent reply, by what held it: " + keysToTheReply);
        assertThat(keysToTheReply).hasSizeGreaterThan(20);
        assertThat(keysToTheReply)
                .allSatisfy((codes, keys) -> assertThat(keys).as(codes).allMatch(n -> n <= 2));
        assertThat(left()).as("only the clinical lead judges an unknown kit").containsExactly("kit-unknown");
        everybodyHasTheirLetter();
    }

    /** Whose last message the sample's truth calls held was answered, the others have their result; nobody was written to twice. */
    private static void everybodyHasTheirLetter() throws IOException {
        Map<String, LetterKind> due = new TreeMap<>();
        Map<String, List<String>> truth = truth();
        Morning.mails(List.of()).stream()
                .map(m -> Objects.requireNonNull(truth.get(m.file())))
                .filter(cells -> cells.get(1).equals("match"))
                .forEach(cells ->
                        due.put(cells.get(2), cells.get(3).equals("held") ? LetterKind.REQUEST : LetterKind.RESULT));
        assertThat(due).hasSizeGreaterThan(40);
        due.forEach((ref, kind) -> assertThat(letters(ref)).as(ref).contains(kind));
        morning.desk
                .store()
                .<List<Submission>>read(tx -> tx.submissions().inStates(EnumSet.allOf(SubmissionState.class)))
                .forEach(s -> assertThat(morning.desk.outbox().of(s.id()))
                        .as("%s", s.id())
                        .filteredOn(l -> l.kind() == LetterKind.REQUEST)
                        .hasSizeLessThanOrEqualTo(s.messages().size()));
    }

    /** The rows of {@code expected.csv} by file. */
    private static Map<String, List<String>> truth() throws IOException {
        return Files.readAllLines(Path.of("sample-mailbox/expected.csv")).stream()
                .map(row -> List.of(row.split(",", 5)))
                .collect(Collectors.toMap(cells -> cells.get(0), cells -> cells));
    }

    private static List<LetterKind> letters(String ref) {
        return morning.desk.casebook().find(ref).stream()
                .flatMap(id -> morning.desk.outbox().of(id).stream())
                .map(OutboxLetter::kind)
                .toList();
    }

    private interface Person {
        void handle(Keyboard keys);
    }

    /** Row by row from the top; what was looked at and left stays for somebody else. */
    private static void clear(Keyboard keys, Person person) {
        Set<String> seen = new HashSet<>();
        keys.turn("q");
        while (opened(keys, seen)) {
            person.handle(keys);
            keys.turn("q");
        }
    }

    /** Goes down the queue to the first row that was not looked at, and opens it. */
    private static boolean opened(Keyboard keys, Set<String> seen) {
        int rows = keys.texts(".row").size();
        for (int i = 0; i < rows; i++) {
            keys.press("j");
            if (seen.add(keys.focused().getDomAttribute("href")
                    + keys.texts(".row .action").get(i))) {
                keys.turn(Keys.ENTER);
                return true;
            }
        }
        return false;
    }

    private void answer(Keyboard keys) {
        if (keys.sees("#send")) {
            String codes = String.join(" ", keys.texts(".checks .hold code"));
            int before = keys.pressed();
            keys.turn("s");
            done(keys);
            keysToTheReply.computeIfAbsent(codes, k -> new TreeSet<>()).add(keys.pressed() - before);
        }
    }

    private static void readOrDecide(Keyboard keys) {
        List<String> codes = keys.texts(".checks .hold code");
        if (keys.sees(".reading")) {
            read(keys);
        } else if (codes.contains("urgent-words")) {
            keys.press("a", "Called at once");
            keys.turn(Keys.ENTER);
            done(keys);
        } else {
            codes.stream().limit(1).map(DECISIONS::get).filter(Objects::nonNull).forEach(c -> decide(keys, c));
        }
    }

    private static void decide(Keyboard keys, Choice choice) {
        keys.press("d", Keys.TAB, Keys.SPACE);
        for (int i = 0; i < choice.arrows(); i++) {
            keys.press(Keys.ARROW_DOWN);
        }
        keys.press(Keys.TAB, choice.reason(), Keys.TAB);
        keys.turn(Keys.ENTER);
        done(keys);
    }

    /** C is there, T is not: whether that is so is not this test's question. */
    private static void read(Keyboard keys) {
        keys.press("r", Keys.SPACE, Keys.TAB, Keys.SPACE, Keys.ARROW_DOWN, Keys.TAB);
        keys.turn(Keys.ENTER);
        keys.press("r");
        keys.turn(Keys.ENTER);
        done(keys);
    }

    private static void done(Keyboard keys) {
        assertThat(keys.texts(".outcome .done"))
                .as("%s", keys.texts(".outcome"))
                .hasSize(1);
    }

    private static List<String> left() {
        return morning.desk.casebook().queue(morning.clock.instant()).stream()
                .map(ClearedByKeysTest::codes)
                .toList();
    }

    private static String codes(QueueRow row) {
        return row.state().code().equals("to-read")
                ? "to-read"
                : String.join(
                        " ", row.holds().stream().map(d -> d.code().code()).toList());
    }
}
