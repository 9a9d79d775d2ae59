package org.tidegate.examination.subject;

import com.code_intelligence.jazzer.Jazzer;
import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.tidegate.finding.SubjectReading;
import org.tidegate.rules.Rules;

/**
 * Fuzz target of the subject reader (Jazzer): whatever is written, the reader answers, and what it answers holds together.
 * {@code main} writes the seeds, our own subject lines, and starts the fuzzer: a folder to work in and seconds to run.
 */
public final class SubjectFuzz {

    private static final SubjectReader READER = new SubjectReader(Rules.bundled());
    private static final Instant ARRIVED = Instant.parse("2026-05-04T09:00:00Z");
    private static final int MOST_CHARS = 4_000;

    private SubjectFuzz() {}

    /** Called by Jazzer. */
    public static void fuzzerTestOneInput(FuzzedDataProvider data) {
        check(data.consumeRemainingAsString());
    }

    /** @throws IllegalStateException for a reading that does not hold together */
    static void check(String subject) {
        StatedText text = new StatedText(Optional.of(subject), "", Optional.of(subject), Optional.of(subject), ARRIVED);
        List<SubjectReading> readings = READER.read(text);
        require(!readings.isEmpty(), "no reading at all");
        for (SubjectReading r : readings) {
            require(Double.isFinite(r.cost()), "a cost that is no number");
            require(
                    r.readable() == (r.name().isPresent() && r.testTime().isPresent()),
                    "readable without name or time");
            require(r.readable() || !r.problems().isEmpty(), "unreadable without a named problem");
            r.spans()
                    .forEach(s -> require(
                            0 <= s.start() && s.start() <= s.end() && s.end() <= subject.length(),
                            "a span outside the subject"));
        }
    }

    private static void require(boolean holds, String what) {
        if (!holds) {
            throw new IllegalStateException(what);
        }
    }

    public static void main(String[] args) throws IOException, InterruptedException {
        Path corpus = Files.createDirectories(Path.of(args[0]));
        seed(corpus);
        Jazzer.main(List.of(
                        "--target_class=" + SubjectFuzz.class.getName(),
                        "--instrumentation_includes=org.tidegate.examination.subject.**",
                        "--custom_hook_includes=org.tidegate.examination.subject.**",
                        "--reproducer_path=" + corpus,
                        "-artifact_prefix=" + corpus + "/",
                        "-max_len=" + MOST_CHARS,
                        "-max_total_time=" + args[1],
                        corpus.toString())
                .toArray(String[]::new));
    }

    private static void seed(Path corpus) throws IOException {
        for (String file : List.of("lines.csv", "later-lines.csv", "latest-lines.csv")) {
            for (CSVRecord row : rows(file)) {
                Files.writeString(corpus.resolve("seed-" + row.get("id")), row.get("subject"));
            }
        }
    }

    private static List<CSVRecord> rows(String file) throws IOException {
        try (InputStream in = Objects.requireNonNull(
                        SubjectFuzz.class.getResourceAsStream("/org/tidegate/examination/corpus/" + file));
                InputStreamReader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
            return new ArrayList<>(CSVFormat.RFC4180
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(reader)
                    .getRecords());
        }
    }
}
