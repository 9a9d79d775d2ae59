package org.tidegate.examination.subject;

import com.code_intelligence.jazzer.Jazzer;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * Writes the seeds, our own subject lines, and starts Jazzer: a folder to work in and seconds to run. Touches no class of the
 * reader, for what is loaded before Jazzer's agent is not instrumented.
 */
public final class SubjectFuzzing {

    private static final String TARGET = "org.tidegate.examination.subject.SubjectFuzz";
    private static final int MOST_CHARS = 4_000;

    private SubjectFuzzing() {}

    public static void main(String[] args) throws IOException, InterruptedException {
        Path corpus = Files.createDirectories(Path.of(args[0]));
        seed(corpus);
        Jazzer.main(List.of(
                        "--target_class=" + TARGET,
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
                        SubjectFuzzing.class.getResourceAsStream("/org/tidegate/examination/corpus/" + file));
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
