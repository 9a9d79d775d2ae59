package org.tidegate.examination.timing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tidegate.Needs;
import org.tidegate.finding.CaptureClue;
import org.tidegate.finding.Event;
import org.tidegate.finding.WindowVerdict.Check;

/**
 * 31 real cameras, clock against GPS (../shared/data/pictures/camera-clock-vs-gps): the zones that the satellite's time leaves open
 * hold the camera's own wherever its fix was fresh and its clock right.
 */
class CameraClocksTest {

    private static final Path DATA = Path.of(System.getProperty("tidegate.data", "../shared/data"));
    private static final DateTimeFormatter EXIF = DateTimeFormatter.ofPattern("uuuu:MM:dd HH:mm:ss");
    private static final Duration DAY = Duration.ofHours(14);

    @Test
    void aFixLeavesTheCamerasOwnZoneOpen() throws IOException {
        Path table = DATA.resolve("pictures/camera-clock-vs-gps/clock-vs-gps.csv");
        Needs.outside(table);
        List<String> wrong = new ArrayList<>();
        int within = 0;
        for (String line : Files.readAllLines(table).subList(1, 32)) {
            String[] f = line.split(",", -1);
            Duration ahead = Duration.ofSeconds(Long.parseLong(f[8]));
            boolean plain = ahead.abs().compareTo(DAY) <= 0 && Math.abs(Integer.parseInt(f[10])) <= 120;
            within += plain ? 1 : 0;
            if (plain && !zoneStands(f[4], f[6] + " " + f[7].substring(0, 8), ahead)) {
                wrong.add(line);
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(within)
                .as("cameras within two minutes of a zone of the clock")
                .isGreaterThanOrEqualTo(17);
    }

    /** The quarter-hour zone nearest to the difference lets both clues stand. */
    private static boolean zoneStands(String exif, String gps, Duration ahead) {
        ZoneOffset zone = ZoneOffset.ofTotalSeconds((int) (Math.round(ahead.toSeconds() / 900.0) * 900));
        CaptureClue shown = new CaptureClue(
                CaptureClue.Kind.EXIF_ORIGINAL, LocalDateTime.parse(exif, EXIF), Optional.of(zone), "DateTimeOriginal");
        Instant fix = LocalDateTime.parse(gps, EXIF).toInstant(ZoneOffset.UTC);
        Capture capture = new Capture(Optional.of(shown), Optional.of(fix), false, "camera");
        Wording wording =
                new Wording(ZoneOffset.UTC, LocalDateTime.parse(exif, EXIF).toLocalDate());
        PhotoClues clues = new PhotoClues(capture, Optional.empty(), Event.ARRIVED, Scene.RULES.timing(), wording);
        CaseRun run = new CaseRun(
                clues.in(new ZoneCase(Optional.of(zone), ZoneCase.Standing.WRITTEN))
                        .clues(),
                wording);
        Question day = Question.between(
                Check.PHOTO, Event.EPOCH, PhotoClues.PHOTO, Duration.ZERO, Duration.ofDays(99_999), Duration.ZERO);
        return run.beliefs().stream().allMatch(b -> b.contradictions().isEmpty())
                && !run.known(day).chains().isEmpty();
    }
}
