package org.tidegate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidegate.Needs;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code examine} on whole messages, from bytes to discrepancies. */
class ExamineTest {

    private static final Path SAMPLE = Path.of("sample-mailbox");
    private static final Path BOOK = SAMPLE.resolve("appointments.csv");
    private static final Path OUTSIDE =
            Path.of(System.getProperty("tidegate.data", "../shared/data"), "messages-visible");
    private static final String LOT = "SK2605A";
    private static final JsonMapper JSON = new JsonMapper();

    @TempDir
    Path folder;

    @Test
    void twiceTheSameInputGivesTheSameBytes() {
        Object[] words = {
            "examine",
            "--appointments",
            BOOK,
            SAMPLE.resolve("01-perfect.eml"),
            SAMPLE.resolve("04-phone-three-hours-fast.eml")
        };
        assertThat(Ran.command(words)).isEqualTo(Ran.command(words));
    }

    @Test
    void anotherTimerChangesTheVerdictOnTime() throws IOException {
        assertThat(holds(BOOK, SAMPLE.resolve("01-perfect.eml"))).isEmpty();
        Path book = folder.resolve("book.csv");
        Files.writeString(book, Files.readString(BOOK).replace("T06:34:00+01:00", "T06:24:00+01:00"));
        assertThat(holds(book, SAMPLE.resolve("01-perfect.eml"))).contains("read-late");
    }

    @Test
    void anOutageOfOursIsNoFaultOfTheSender() {
        Path late = SAMPLE.resolve("12-sent-late.eml");
        assertThat(holds(BOOK, late)).contains("late");
        JsonNode answer = examined("--outage", "2026-05-04T08:30:00+01:00/2026-05-04T09:10:00+01:00", late);
        assertThat(codes(answer, "hold")).isEmpty();
        assertThat(codes(answer, "note")).containsExactly("our-outage");
        assertThat(answer.toString()).contains("Our own mail was down from 08:30:00 (+01:00) to 09:10:00 (+01:00).");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"2026-05-04T08:30:00+01:00", "yesterday/today", "2026-05-04T09:00:00Z/2026-05-04T08:00:00Z"})
    void anOutageThatIsNoneIsRefused(String outage) {
        Ran ran = Ran.command("examine", "--appointments", BOOK, "--outage", outage, SAMPLE.resolve("01-perfect.eml"));
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("--outage");
    }

    @Test
    void aQuarantinedLotHoldsItsTests() {
        JsonNode answer = examined("--quarantined-lot", LOT, SAMPLE.resolve("01-perfect.eml"));
        assertThat(codes(answer, "hold")).containsExactly("lot-quarantined");
    }

    @Test
    void aWrongClockOfAPhoneIsToldWithItsBounds() {
        JsonNode clock =
                examined(SAMPLE.resolve("04-phone-three-hours-fast.eml")).get("phone_clock");
        assertThat(Duration.parse(clock.get("least").asString()))
                .isBetween(Duration.ofMinutes(177), Duration.ofHours(3));
        assertThat(clock.get("words").asString())
                .isEqualTo("The clock of the Eider 9 is 2 h 59 min 57 s to 3 h 2 min 59 s fast.");
    }

    @Test
    void explainsForPeople() {
        Ran ran = Ran.command("examine", "--appointments", BOOK, "--explain", SAMPLE.resolve("11-read-late.eml"));
        assertThat(ran.out())
                .contains(
                        "photo in the reading window: outside by 7 min 55 s, decided by the device's clock",
                        "This leans on: the clock of the Fulmar F6 is right;",
                        "A trained, authorised reader decides.");
    }

    @Test
    void anotherSenderIsNoted() throws IOException {
        Path copy = folder.resolve("copy.eml");
        byte[] raw = Files.readAllBytes(SAMPLE.resolve("01-perfect.eml"));
        String text = new String(raw, StandardCharsets.ISO_8859_1)
                .replace("maren.tollisker@tarnpost.example", "someone.else@tarnpost.example");
        Files.write(copy, text.getBytes(StandardCharsets.ISO_8859_1));
        assertThat(codes(BOOK, copy, "note")).contains("sender-unknown");
        assertThat(codes(BOOK, SAMPLE.resolve("01-perfect.eml"), "note")).doesNotContain("sender-unknown");
    }

    @Test
    void anotherPhotoChangesWhatIsSeen() throws IOException {
        Path copy = folder.resolve("copy.eml");
        String whole = Files.readString(SAMPLE.resolve("01-perfect.eml"), StandardCharsets.ISO_8859_1);
        String bare = Files.readString(SAMPLE.resolve("44-no-id.eml"), StandardCharsets.ISO_8859_1);
        Files.writeString(
                copy,
                head(whole) + photo(bare, boundary(bare)).replace(boundary(bare), boundary(whole)),
                StandardCharsets.ISO_8859_1);
        assertThat(holds(BOOK, copy)).contains("no-id");
    }

    /** Outside check: whole messages by another hand with their truth. */
    @Test
    void agreesWithTheTruthOfTheVisibleMessages() throws IOException {
        Needs.outside(OUTSIDE);
        List<Path> files;
        try (Stream<Path> listed = Files.list(OUTSIDE)) {
            files = listed.filter(f -> f.toString().endsWith(".eml")).sorted().toList();
        }
        Object[] words = Stream.concat(
                        Stream.of("examine", "--appointments", OUTSIDE.resolve("appointments.csv")), files.stream())
                .toArray();
        List<String> found =
                Ran.command(words).out().lines().map(ExamineTest::summary).toList();
        List<String> truth = Files.readString(OUTSIDE.resolve("truth.jsonl"))
                .lines()
                .map(ExamineTest::truth)
                .sorted()
                .toList();
        assertThat(found).containsExactlyElementsOf(truth);
    }

    private static String summary(String line) {
        JsonNode o = JSON.readTree(line);
        return Path.of(o.get("file").asString()).getFileName() + " "
                + o.get("outcome").asString() + " " + o.get("ref").asString() + " " + codes(o, "hold");
    }

    private static String truth(String line) {
        JsonNode o = JSON.readTree(line);
        TreeSet<String> holds = new TreeSet<>();
        o.get("hold").forEach(h -> holds.add(h.asString()));
        return o.get("file").asString() + " " + o.get("outcome").asString() + " "
                + o.get("ref").asString() + " " + holds;
    }

    private static TreeSet<String> holds(Path book, Path file) {
        return codes(book, file, "hold");
    }

    private static JsonNode examined(Object... more) {
        return examinedWith(BOOK, more);
    }

    private static JsonNode examinedWith(Path book, Object... more) {
        Ran ran = Ran.command(Stream.concat(Stream.of("examine", "--appointments", book), Stream.of(more))
                .toArray());
        assertThat(ran.code()).as(ran.err()).isZero();
        return JSON.readTree(ran.out());
    }

    private static TreeSet<String> codes(Path book, Path file, String severity) {
        return codes(examinedWith(book, file), severity);
    }

    private static TreeSet<String> codes(JsonNode answer, String severity) {
        TreeSet<String> codes = new TreeSet<>();
        answer.get("discrepancies").forEach(d -> {
            if (d.get("severity").asString().equals(severity)) {
                codes.add(d.get("code").asString());
            }
        });
        return codes;
    }

    private static String boundary(String message) {
        int at = message.indexOf("boundary=\"") + 10;
        return message.substring(at, message.indexOf('"', at));
    }

    /** Everything before the photo's part. */
    private static String head(String message) {
        return message.substring(0, message.indexOf("--" + boundary(message) + "\r\nContent-Type: image/jpeg"));
    }

    private static String photo(String message, String boundary) {
        return message.substring(message.indexOf("--" + boundary + "\r\nContent-Type: image/jpeg"));
    }
}
