package org.tidegate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidegate.rules.RulesReader;
import org.tidegate.rules.RulesResult;

/** The demo, from the IMAP server to the queue, against the truth that was written from the stories. */
class DemoTest {

    @TempDir
    Path data;

    @Test
    void equalsTheTruthInEveryRow() throws Exception {
        List<DemoRow> rows;
        try (DemoMail mail = new DemoMail()) {
            rows = DemoCommand.morning(
                    data, ((RulesResult.Loaded) RulesReader.bundled()).rules(), mail, SampleMorning.messages());
        }
        List<String> found = rows.stream().map(DemoTest::line).sorted().toList();
        assertThat(found).containsExactlyElementsOf(expected());
        assertThat(found).hasSizeGreaterThanOrEqualTo(45);
    }

    private static String line(DemoRow r) {
        return String.join(
                " | ",
                r.file(),
                r.outcome(),
                r.ref().orElse(""),
                r.verdict(),
                String.join(" ", r.holds()),
                String.join(" ", r.notes()),
                r.photo(),
                r.sent());
    }

    private static List<String> expected() throws Exception {
        List<String> lines = new ArrayList<>();
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser csv = CSVParser.parse(SampleMorning.text("expected.csv"), format)) {
            for (CSVRecord r : csv) {
                lines.add(String.join(
                        " | ",
                        Arrays.asList(
                                r.get("file"),
                                r.get("outcome"),
                                r.get("ref"),
                                r.get("verdict"),
                                r.get("holds"),
                                r.get("notes"),
                                r.get("photo"),
                                r.get("sent"))));
            }
        }
        return lines.stream().sorted().toList();
    }
}
