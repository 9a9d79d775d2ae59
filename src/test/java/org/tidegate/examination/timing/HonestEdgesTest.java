package org.tidegate.examination.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tidegate.examination.timing.Scene.exif;
import static org.tidegate.examination.timing.Scene.fileName;
import static org.tidegate.examination.timing.Scene.gps;

import java.time.LocalTime;
import java.util.List;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import org.tidegate.finding.CaptureClue;
import org.tidegate.finding.Verdict;

/**
 * The edges of the reading window by people with right phones and a recorded timer (issue 4): 20:05 and 29:55 are inside, 12:00 and
 * 40:00 outside, in summer as in winter, at home as abroad, however soon or late the mail follows.
 */
class HonestEdgesTest {

    private static final String PHONE = "Kestrel Mail 8.2 (K5; phone)";
    private static final String WEBMAIL = "Brae Webmail 3.2";

    /** Seconds from photo to mail, and from mail to our server. */
    private static final List<int[]> DELAYS =
            List.of(new int[] {20, 4}, new int[] {65, 13}, new int[] {140, 100}, new int[] {600, 20});

    /** A way to send a photo taken at a time of the clinic's clock. */
    private record Way(String name, BiFunction<Moment, LocalTime, Scene> scene) {}

    /** A day and the clinic's offset on it. */
    private record Moment(String day, String offset, int[] delay) {

        String at(LocalTime clock) {
            return day + "T" + clock + offset;
        }

        String wall(LocalTime clock) {
            return day + "T" + clock;
        }
    }

    private static final List<Way> SURE = List.of(
            new Way("same phone", (m, t) -> samePhone(m, t, 0, exif(m.wall(t)))),
            new Way("same phone abroad", (m, t) -> samePhone(m, t, 2, exif(m.wall(t.plusHours(2))))),
            new Way("same phone, photo with offset", (m, t) -> samePhone(m, t, 0, exif(m.wall(t), m.offset()))),
            new Way("webmail, photo with offset", (m, t) -> webmail(m, t, exif(m.wall(t), m.offset()))));

    private static final List<Way> TIMED = List.of(
            SURE.get(0),
            SURE.get(1),
            SURE.get(2),
            SURE.get(3),
            new Way("webmail, photo without zone", (m, t) -> webmail(m, t, exif(m.wall(t)))),
            new Way("webmail, file name", (m, t) -> webmail(m, t, fileName(m.wall(t)))),
            new Way("webmail, GPS stamp", (m, t) -> webmail(m, t, gps(utc(m, t)))),
            new Way("webmail, both", (m, t) -> webmail(m, t, exif(m.wall(t)), gps(utc(m, t)))));

    @Test
    void areInside() {
        for (String clock : List.of("09:20:05", "09:29:55")) {
            expect(Verdict.INSIDE, SURE, clock);
        }
    }

    @Test
    void areOutside() {
        for (String clock : List.of("09:12:00", "09:40:00")) {
            expect(Verdict.OUTSIDE, TIMED, clock);
        }
    }

    private static void expect(Verdict verdict, List<Way> ways, String clock) {
        for (Way way : ways) {
            for (int[] delay : DELAYS) {
                for (Moment m :
                        List.of(new Moment("2026-05-04", "+01:00", delay), new Moment("2026-01-12", "+00:00", delay))) {
                    TimeJudgement j =
                            way.scene().apply(m, LocalTime.parse(clock)).judge();
                    assertThat(j.photo().orElseThrow().verdict())
                            .as(() -> way.name() + " on " + m.day() + " at " + clock + ", sent after " + delay[0]
                                    + " s: " + j.photo())
                            .isEqualTo(verdict);
                }
            }
        }
    }

    private static Scene samePhone(Moment m, LocalTime photo, int abroad, CaptureClue... capture) {
        LocalTime sent = photo.plusSeconds(m.delay()[0]);
        int hours = (m.offset().equals("+01:00") ? 1 : 0) + abroad;
        return mailed(m, sent)
                .program(PHONE)
                .date(m.wall(sent.plusHours(abroad)), "+0" + hours + ":00")
                .photo("Kestrel", "K5", capture);
    }

    private static Scene webmail(Moment m, LocalTime photo, CaptureClue... capture) {
        return mailed(m, photo.plusSeconds(m.delay()[0])).program(WEBMAIL).photo("Ostrea", "Ostrea 3", capture);
    }

    private static Scene mailed(Moment m, LocalTime sent) {
        LocalTime arrived = sent.plusSeconds(m.delay()[1]);
        return Scene.timer(m.at(LocalTime.of(9, 0, 1)))
                .arrived(m.at(arrived))
                .received("smtp.example.org", "198.51.100.24", m.at(sent.plusSeconds(m.delay()[1] / 2)));
    }

    private static String utc(Moment m, LocalTime clock) {
        return m.wall(m.offset().equals("+01:00") ? clock.minusHours(1) : clock);
    }
}
