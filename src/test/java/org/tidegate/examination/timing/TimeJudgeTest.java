package org.tidegate.examination.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tidegate.examination.timing.Scene.exif;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Stories of the trade, each judged as a whole. */
class TimeJudgeTest {

    private static final String PHONE = "Kestrel Mail 8.2 (K5; phone)";
    private static final String WEBMAIL = "Brae Webmail 3.2";

    @ParameterizedTest(name = "{0}")
    @MethodSource("stories")
    void judgesTheStory(String story, Scene scene, String expected) {
        TimeJudgement j = scene.judge();
        assertThat(told(j)).as("%s%n%s", story, j).isEqualTo(expected);
    }

    static Stream<Arguments> stories() {
        return Stream.of(
                story(
                        "one phone, no zone in the photo",
                        "inside inside",
                        Scene.timer("09:34:14+01:00")
                                .program(PHONE)
                                .date("10:00:16", "+01:00")
                                .arrived("10:00:39+01:00")
                                .received("smtp.example.org", "198.51.100.24", "10:00:25+01:00")
                                .photo("Kestrel", "K5", exif("09:59:24"))),
                story(
                        "phone 7 min fast for photo and Date alike",
                        "inside inside conflict fast",
                        Scene.timer("11:03:46+01:00")
                                .program(PHONE)
                                .date("11:36:43", "+01:00")
                                .arrived("11:29:50+01:00")
                                .received("smtp.fernpost.example", "192.0.2.156", "12:29:47+02:00")
                                .photo("Kestrel", "K5", exif("11:35:51"))),
                story(
                        "abroad, photo without a zone",
                        "inside inside",
                        Scene.timer("10:03:27+01:00")
                                .program(PHONE)
                                .date("11:29:40", "+02:00")
                                .arrived("10:29:52+01:00")
                                .received("smtp.example.org", "192.0.2.30", "10:29:48+01:00")
                                .photo("Kestrel", "K5", exif("11:28:29"))),
                story(
                        "late in transit",
                        "inside undetermined softened",
                        Scene.timer("07:03:01+01:00")
                                .program("Sandpiper Mail 11.0 (LP7; phone)")
                                .date("07:30:09", "+01:00")
                                .arrived("08:30:21+01:00")
                                .received("out2.example.net", "198.51.100.147", "03:30:15-04:00")
                                .received("smtp.example.net", "203.0.113.168", "02:30:15-04:00")
                                .photo("Larkphone", "LP7", exif("07:28:00"))),
                story(
                        "webmail, read early",
                        "outside EARLY inside",
                        Scene.timer("11:03:57+01:00")
                                .program(WEBMAIL)
                                .date("10:18:58", "+00:00")
                                .arrived("11:19:19+01:00")
                                .received("web5.brae-mail.example", "203.0.113.177", "10:19:05+00:00")
                                .photo("Ostrea", "Ostrea 3", exif("11:17:08"))),
                story(
                        "webmail, sent late",
                        "inside outside",
                        Scene.slot("06:30:00+01:00")
                                .stated("06:33:00")
                                .program(WEBMAIL)
                                .date("07:23:00", "+00:00")
                                .arrived("08:23:12+01:00")
                                .received("web2.tarnmail.example", "198.51.100.153", "00:23:06-07:00")
                                .photo("Ostrea", "Ostrea 3", exif("06:58:05", "+01:00"))),
                story(
                        "no capture time",
                        "undetermined inside untimed",
                        Scene.timer("10:02:11+01:00")
                                .program(WEBMAIL)
                                .date("09:28:47", "+00:00")
                                .arrived("10:29:03+01:00")
                                .photo("", "")),
                story(
                        "no capture time, but here before the window opened",
                        "outside EARLY inside untimed",
                        Scene.timer("10:02:11+01:00")
                                .program(WEBMAIL)
                                .date("09:15:00", "+00:00")
                                .arrived("10:15:03+01:00")
                                .photo("", "")));
    }

    private static Arguments story(String story, String expected, Scene scene) {
        return Arguments.of(story, scene, expected);
    }

    private static String told(TimeJudgement j) {
        StringBuilder told = new StringBuilder();
        told.append(j.photo().map(v -> v.verdict().code()).orElse("none"));
        j.side().ifPresent(s -> told.append(' ').append(s));
        told.append(' ').append(j.sent().verdict().code());
        told.append(j.sentSoftened() ? " softened" : "");
        told.append(j.outage() ? " outage" : "");
        j.conflict().ifPresent(c -> told.append(c.decides() ? " conflict!" : " conflict"));
        told.append(j.statedDiffers() ? " differs" : "");
        told.append(j.noCaptureTime() ? " untimed" : "");
        j.phoneClock().ifPresent(c -> told.append(c.least().isNegative() ? " slow" : " fast"));
        return told.toString();
    }
}
