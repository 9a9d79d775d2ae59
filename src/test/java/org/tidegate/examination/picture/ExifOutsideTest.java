package org.tidegate.examination.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidegate.finding.CaptureClue;
import org.tidegate.finding.CaptureClue.Kind;

/**
 * Records of real cameras against what another program (exiftool 12.57; expected-exiftool-12.57.csv in ../shared/data/pictures/exif-*) reads
 * in the same files. Values that are no time at all (zeros, blanks, day 259) have to be absent here.
 */
class ExifOutsideTest {

    private static final Pattern TIME =
            Pattern.compile("(\\d{4}):(\\d\\d):(\\d\\d) (\\d\\d):(\\d\\d):(\\d\\d)(?:\\.\\d+)?(?:Z)?");

    @ParameterizedTest
    @CsvSource({
        "exif-metadata-extractor, images, 25",
        "exif-tika, '', 8",
        "exif-commons-imaging, '', 6",
    })
    void saysWhatTheOtherProgramSays(String set, String folder, int atLeast) throws IOException {
        Path root = OutsideData.path("pictures/" + set);
        List<String> differences = new ArrayList<>();
        int compared = 0;
        for (CSVRecord row : OutsideData.rows(root.resolve("expected-exiftool-12.57.csv"), ',')) {
            Optional<Path> file = find(root, row.get("file"));
            if (file.isEmpty() || !row.get("Error").isBlank()) {
                continue;
            }
            FileFacts facts = FileFactsReader.read(OutsideData.bytes(file.get()));
            compare(row, facts, differences);
            compared++;
        }
        assertThat(differences).isEmpty();
        assertThat(compared).isGreaterThanOrEqualTo(atLeast);
    }

    private static Optional<Path> find(Path root, String name) throws IOException {
        try (var files = Files.walk(root)) {
            return files.filter(f -> f.getFileName().toString().equals(name)
                            || f.toString().endsWith("/" + name))
                    .findFirst();
        }
    }

    private static void compare(CSVRecord row, FileFacts facts, List<String> differences) {
        same(row, "Make", facts.make().orElse(""), differences);
        same(row, "Model", facts.model().orElse(""), differences);
        sameTime(row, "DateTimeOriginal", Kind.EXIF_ORIGINAL, facts, differences);
        sameTime(row, "CreateDate", Kind.EXIF_DIGITIZED, facts, differences);
        sameTime(row, "ModifyDate", Kind.EXIF_MODIFIED, facts, differences);
        sameGps(row, facts, differences);
        String offset = first(facts, Kind.EXIF_ORIGINAL)
                .flatMap(CaptureClue::offset)
                .map(o -> o.getId().equals("Z") ? "+00:00" : o.getId())
                .orElse("");
        if (first(facts, Kind.EXIF_ORIGINAL).isPresent()) {
            same(row, "OffsetTimeOriginal", offset, differences);
        }
    }

    private static void same(CSVRecord row, String column, String ours, List<String> differences) {
        String theirs = row.get(column).strip();
        if (!theirs.equals(ours)) {
            differences.add(row.get("file") + ": " + column + " '" + theirs + "' here '" + ours + "'");
        }
    }

    private static void sameTime(CSVRecord row, String column, Kind kind, FileFacts facts, List<String> differences) {
        Optional<LocalDateTime> ours =
                first(facts, kind).map(CaptureClue::wall).map(t -> t.truncatedTo(ChronoUnit.SECONDS));
        Optional<LocalDateTime> theirs = time(row.get(column));
        if (!ours.equals(theirs)) {
            differences.add(row.get("file") + ": " + column + " '" + row.get(column) + "' here " + ours);
        }
    }

    private static void sameGps(CSVRecord row, FileFacts facts, List<String> differences) {
        String written =
                row.get("GPSDateStamp").strip() + " " + row.get("GPSTimeStamp").strip();
        Optional<LocalDateTime> ours =
                first(facts, Kind.GPS).map(CaptureClue::wall).map(t -> t.truncatedTo(ChronoUnit.SECONDS));
        if (!ours.equals(time(written))) {
            differences.add(row.get("file") + ": GPS '" + written + "' here " + ours);
        }
    }

    private static Optional<LocalDateTime> time(String written) {
        Matcher m = TIME.matcher(written.strip());
        if (!m.matches()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDateTime.of(
                    Integer.parseInt(m.group(1)),
                    Integer.parseInt(m.group(2)),
                    Integer.parseInt(m.group(3)),
                    Integer.parseInt(m.group(4)),
                    Integer.parseInt(m.group(5)),
                    Integer.parseInt(m.group(6))));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static Optional<CaptureClue> first(FileFacts facts, Kind kind) {
        return facts.capture().stream().filter(c -> c.kind() == kind).findFirst();
    }
}
