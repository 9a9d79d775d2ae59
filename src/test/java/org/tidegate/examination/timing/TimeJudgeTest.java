package org.tidegate.examination.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tidegate.examination.timing.Scene.exif;
import static org.tidegate.examination.timing.Scene.fileName;
import static org.tidegate.examination.timing.Scene.gps;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.tidegate.finding.PictureFinding;

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
                                .received("smtp.example.org", "198.51.100.24", "12:29:47+02:00")
                                .photo("Kestrel", "K5", exif("11:35:51"))),
                story(
                        "phone 3 h fast but consistent",
                        "inside inside conflict fast",
                        Scene.timer("11:03:46+01:00")
                                .program(PHONE)
                                .date("14:29:43", "+01:00")
                                .arrived("11:29:50+01:00")
                                .received("smtp.example.org", "198.51.100.24", "11:29:47+01:00")
                                .photo("Kestrel", "K5", exif("14:28:51"))),
                story(
                        "phone 3 h fast, photo with offset",
                        "inside inside conflict fast",
                        Scene.timer("11:03:46+01:00")
                                .program(PHONE)
                                .date("14:29:43", "+01:00")
                                .arrived("11:29:50+01:00")
                                .received("smtp.example.org", "198.51.100.24", "11:29:47+01:00")
                                .photo("Kestrel", "K5", exif("14:28:51", "+01:00"))),
                story(
                        "phone 12 min slow: no telling from a message that waited",
                        "undetermined inside",
                        Scene.timer("11:03:46+01:00")
                                .program(PHONE)
                                .date("11:17:43", "+01:00")
                                .arrived("11:29:50+01:00")
                                .received("smtp.example.org", "198.51.100.24", "11:29:47+01:00")
                                .photo("Kestrel", "K5", exif("11:16:51"))),
                story(
                        "phone 4 min slow stretches",
                        "inside inside",
                        Scene.timer("11:03:46+01:00")
                                .program(PHONE)
                                .date("11:25:43", "+01:00")
                                .arrived("11:29:50+01:00")
                                .received("smtp.example.org", "198.51.100.24", "11:29:47+01:00")
                                .photo("Kestrel", "K5", exif("11:24:51"))),
                story(
                        "abroad, photo without a zone",
                        "inside inside",
                        Scene.timer("10:03:27+01:00")
                                .program(PHONE)
                                .date("11:29:40", "+02:00")
                                .arrived("10:29:52+01:00")
                                .received("smtp.example.org", "198.51.100.24", "10:29:48+01:00")
                                .photo("Kestrel", "K5", exif("11:28:29"))),
                story(
                        "a program that writes Date in UTC",
                        "inside inside",
                        Scene.timer("10:03:27+01:00")
                                .program(PHONE)
                                .date("09:29:40", "+00:00")
                                .arrived("10:29:52+01:00")
                                .received("smtp.example.org", "198.51.100.24", "10:29:48+01:00")
                                .photo("Kestrel", "K5", exif("10:28:29"))),
                story(
                        "a phone in the UTC zone",
                        "inside inside",
                        Scene.timer("10:03:27+01:00")
                                .program(PHONE)
                                .date("09:29:40", "+00:00")
                                .arrived("10:29:52+01:00")
                                .received("smtp.example.org", "198.51.100.24", "10:29:48+01:00")
                                .photo("Kestrel", "K5", exif("09:28:29"))),
                story(
                        "Date without a zone",
                        "inside inside",
                        Scene.timer("10:03:27+01:00")
                                .program(PHONE)
                                .date("10:29:40", "")
                                .arrived("10:29:52+01:00")
                                .received("smtp.example.org", "198.51.100.24", "10:29:48+01:00")
                                .photo("Kestrel", "K5", exif("10:28:29"))),
                story(
                        "Date without a zone, photo with one",
                        "inside inside",
                        Scene.timer("10:03:27+01:00")
                                .program(PHONE)
                                .date("10:29:40", "")
                                .arrived("10:29:52+01:00")
                                .received("smtp.example.org", "198.51.100.24", "10:29:48+01:00")
                                .photo("Kestrel", "K5", exif("10:28:29", "+01:00"))),
                story(
                        "Date with -0000: the time counts, the zone is unknown",
                        "inside inside",
                        Scene.timer("10:03:27+01:00")
                                .program(PHONE)
                                .dateInUnknownZone("09:29:40")
                                .arrived("10:29:52+01:00")
                                .received("smtp.example.org", "198.51.100.24", "10:29:48+01:00")
                                .photo("Kestrel", "K5", exif("10:28:29"))),
                story(
                        "20:05 after the timer",
                        "inside inside",
                        Scene.timer("07:00:00+01:00")
                                .program(PHONE)
                                .date("07:21:00", "+01:00")
                                .arrived("07:21:00+01:00")
                                .received("smtp.example.org", "198.51.100.24", "07:21:00+01:00")
                                .photo("Kestrel", "K5", exif("07:20:05"))),
                story(
                        "29:55 after the timer",
                        "inside inside",
                        Scene.timer("07:00:00+01:00")
                                .program(PHONE)
                                .date("07:31:00", "+01:00")
                                .arrived("07:31:00+01:00")
                                .received("smtp.example.org", "198.51.100.24", "07:31:00+01:00")
                                .photo("Kestrel", "K5", exif("07:29:55"))),
                story(
                        "20:05 after the timer, abroad",
                        "inside inside",
                        Scene.timer("07:00:00+01:00")
                                .program(PHONE)
                                .date("08:21:00", "+02:00")
                                .arrived("07:21:04+01:00")
                                .received("smtp.example.org", "198.51.100.24", "07:21:04+01:00")
                                .photo("Kestrel", "K5", exif("08:20:05"))),
                story(
                        "29:55 after the timer, abroad",
                        "inside inside",
                        Scene.timer("07:00:00+01:00")
                                .program(PHONE)
                                .date("08:31:00", "+02:00")
                                .arrived("07:31:04+01:00")
                                .received("smtp.example.org", "198.51.100.24", "07:31:04+01:00")
                                .photo("Kestrel", "K5", exif("08:29:55"))),
                story(
                        "12:00 after the timer",
                        "outside EARLY inside",
                        Scene.timer("07:00:00+01:00")
                                .program(PHONE)
                                .date("07:13:00", "+01:00")
                                .arrived("07:13:00+01:00")
                                .received("smtp.example.org", "198.51.100.24", "07:13:00+01:00")
                                .photo("Kestrel", "K5", exif("07:12:00"))),
                story(
                        "40:00 after the timer",
                        "outside LATE inside",
                        Scene.timer("07:00:00+01:00")
                                .program(PHONE)
                                .date("07:41:00", "+01:00")
                                .arrived("07:41:00+01:00")
                                .received("smtp.example.org", "198.51.100.24", "07:41:00+01:00")
                                .photo("Kestrel", "K5", exif("07:40:00"))),
                story(
                        "40:00 after the timer, phone 7 min fast",
                        "outside LATE inside conflict fast",
                        Scene.timer("07:00:00+01:00")
                                .program(PHONE)
                                .date("07:48:00", "+01:00")
                                .arrived("07:41:03+01:00")
                                .received("smtp.example.org", "198.51.100.24", "07:41:03+01:00")
                                .photo("Kestrel", "K5", exif("07:47:00"))),
                story(
                        "before the test",
                        "outside BEFORE_TEST inside",
                        Scene.timer("07:33:00+01:00")
                                .program(PHONE)
                                .date("07:58:00", "+01:00")
                                .arrived("07:58:00+01:00")
                                .received("smtp.example.org", "198.51.100.24", "07:58:00+01:00")
                                .photo("Kestrel", "K5", exif("07:10:00"))),
                story(
                        "stated narrows the slot",
                        "inside inside",
                        Scene.slot("07:00:00+01:00")
                                .stated("07:03:00")
                                .program(PHONE)
                                .date("07:28:56", "+01:00")
                                .arrived("07:28:56+01:00")
                                .received("smtp.example.org", "198.51.100.24", "07:28:56+01:00")
                                .photo("Kestrel", "K5", exif("07:28:07"))),
                story(
                        "slot alone says little",
                        "undetermined inside",
                        Scene.slot("07:00:00+01:00")
                                .program(PHONE)
                                .date("07:28:56", "+01:00")
                                .arrived("07:28:56+01:00")
                                .received("smtp.example.org", "198.51.100.24", "07:28:56+01:00")
                                .photo("Kestrel", "K5", exif("07:28:07"))),
                story(
                        "slot alone, late beyond doubt",
                        "outside LATE outside",
                        Scene.slot("07:00:00+01:00")
                                .program(PHONE)
                                .date("08:20:56", "+01:00")
                                .arrived("08:20:56+01:00")
                                .received("smtp.example.org", "198.51.100.24", "08:20:56+01:00")
                                .photo("Kestrel", "K5", exif("08:10:07"))),
                story(
                        "stated outside the slot narrows nothing",
                        "undetermined inside differs",
                        Scene.slot("07:00:00+01:00")
                                .stated("06:20:00")
                                .program(PHONE)
                                .date("07:28:56", "+01:00")
                                .arrived("07:28:56+01:00")
                                .received("smtp.example.org", "198.51.100.24", "07:28:56+01:00")
                                .photo("Kestrel", "K5", exif("07:28:07"))),
                story(
                        "stated differs from the timer",
                        "inside inside differs",
                        Scene.timer("07:33:00+01:00")
                                .stated("07:03:00")
                                .program(PHONE)
                                .date("07:59:00", "+01:00")
                                .arrived("07:59:00+01:00")
                                .received("smtp.example.org", "198.51.100.24", "07:59:00+01:00")
                                .photo("Kestrel", "K5", exif("07:58:00"))),
                story(
                        "stated on a twelve-hour clock",
                        "inside inside",
                        Scene.slot("14:45:00+01:00")
                                .stated("02:49:00")
                                .program(PHONE)
                                .date("15:14:04", "+01:00")
                                .arrived("15:14:04+01:00")
                                .received("smtp.example.org", "198.51.100.24", "15:14:04+01:00")
                                .photo("Kestrel", "K5", exif("15:13:18"))),
                story(
                        "stated in the phone's zone",
                        "inside inside",
                        Scene.slot("14:45:00+01:00")
                                .stated("15:49:00")
                                .program(PHONE)
                                .date("16:14:04", "+02:00")
                                .arrived("15:14:10+01:00")
                                .received("smtp.example.org", "198.51.100.24", "15:14:10+01:00")
                                .photo("Kestrel", "K5", exif("16:13:18"))),
                story(
                        "sent late",
                        "inside outside",
                        Scene.timer("07:00:00+01:00")
                                .program(PHONE)
                                .date("08:05:00", "+01:00")
                                .arrived("08:05:00+01:00")
                                .received("smtp.example.org", "198.51.100.24", "08:05:00+01:00")
                                .photo("Kestrel", "K5", exif("07:25:00"))),
                story(
                        "sent within the deadline's doubt",
                        "inside undetermined",
                        Scene.timer("07:00:00+01:00")
                                .program(PHONE)
                                .date("07:49:40", "+01:00")
                                .arrived("07:49:40+01:00")
                                .received("smtp.example.org", "198.51.100.24", "07:49:40+01:00")
                                .photo("Kestrel", "K5", exif("07:25:00"))),
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
                        "late in transit, our outage",
                        "inside undetermined outage",
                        Scene.timer("07:03:01+01:00")
                                .outage("07:30:00+01:00", "08:20:00+01:00")
                                .program("Sandpiper Mail 11.0 (LP7; phone)")
                                .date("07:30:09", "+01:00")
                                .arrived("08:30:21+01:00")
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
                                .arrived("08:23:12+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("06:58:05", "+01:00"))),
                story(
                        "webmail, read in time, no zone",
                        "inside inside",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .arrived("07:26:12+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("07:25:05"))),
                story(
                        "webmail, read late, no zone",
                        "outside LATE inside",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .arrived("07:43:12+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("07:41:05"))),
                story(
                        "webmail, phone 7 min fast",
                        "undetermined inside conflict! fast",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .arrived("07:26:12+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("07:32:05", "+01:00"))),
                story(
                        "webmail, phone 7 min fast, no zone: no journey makes it honest, but how fast it is nobody knows",
                        "undetermined inside conflict!",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .arrived("07:26:12+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("07:32:05"))),
                story(
                        "webmail, abroad, no zone: a journey explains it",
                        "undetermined inside",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .arrived("07:26:12+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("08:25:05"))),
                story(
                        "webmail, abroad, no zone, fresh fix",
                        "inside inside",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .arrived("07:26:12+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("08:25:05"), gps("06:25:01"))),
                story(
                        "stale fix",
                        "inside inside",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .arrived("07:26:12+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("07:25:05", "+01:00"), gps("05:05:01"))),
                story(
                        "stale fix, no zone",
                        "inside inside",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .arrived("07:26:12+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("07:25:05"), gps("05:05:01"))),
                story(
                        "GPS a day off",
                        "inside inside conflict",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .arrived("07:26:12+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("07:25:05", "+01:00"), gps("23:25:01"))),
                story(
                        "only a fix",
                        "inside inside",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .arrived("07:26:12+01:00")
                                .photo("Ostrea", "Ostrea 3", gps("06:24:01"))),
                story(
                        "file name only",
                        "inside inside",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .arrived("07:26:12+01:00")
                                .photo("Ostrea", "Ostrea 3", fileName("07:25:05"))),
                story(
                        "file name only, early",
                        "outside EARLY inside",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .arrived("07:26:12+01:00")
                                .photo("Ostrea", "Ostrea 3", fileName("07:09:05"))),
                story(
                        "screenshot: taken some time before",
                        "undetermined inside untimed",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .arrived("07:27:00+01:00")
                                .picture(PictureFinding.Kind.SCREENSHOT, "", "", fileName("07:26:00"))),
                story(
                        "screenshot in some zone",
                        "undetermined inside untimed",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .arrived("07:27:00+01:00")
                                .picture(PictureFinding.Kind.SCREENSHOT, "", "", fileName("07:10:00"))),
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
                                .photo("", "")),
                story(
                        "two photos, one inside",
                        "inside inside",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .arrived("07:27:00+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("07:08:00"))
                                .photo("Ostrea", "Ostrea 3", exif("07:25:00"))),
                story(
                        "colleague forwards: another phone",
                        "inside inside",
                        Scene.timer("07:00:00+01:00")
                                .program("Ostrea Post 5.1 (Ostrea 3; phone)")
                                .date("07:40:00", "+01:00")
                                .arrived("07:40:05+01:00")
                                .photo("Kestrel", "K5", exif("07:25:00"))),
                story(
                        "supplement in time",
                        "inside inside",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .arrived("07:27:00+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("07:25:00"))
                                .then()
                                .supplementOnly()
                                .arrived("08:50:00+01:00")),
                story(
                        "supplement too late",
                        "inside outside",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .arrived("07:27:00+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("07:25:00"))
                                .then()
                                .supplementOnly()
                                .arrived("09:50:00+01:00")),
                story(
                        "late, but signed in time by the sender's mail service",
                        "inside undetermined softened",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .arrived("08:27:00+01:00")
                                .signed("tarnpost.example", "07:27:00+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("07:25:00"))),
                story(
                        "a signature that does not verify softens nothing",
                        "inside outside",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .arrived("08:27:00+01:00")
                                .signed("tarnpost.example", "07:27:00+01:00", true, false, "from", "subject", "date")
                                .photo("Ostrea", "Ostrea 3", exif("07:25:00"))),
                story(
                        "a signature that leaves Date out softens nothing",
                        "inside outside",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .arrived("08:27:00+01:00")
                                .signed("tarnpost.example", "07:27:00+01:00", true, true, "from", "subject")
                                .photo("Ostrea", "Ostrea 3", exif("07:25:00"))),
                story(
                        "a signature of a part of the body, to which a photo can be appended, softens nothing",
                        "inside outside",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .arrived("08:27:00+01:00")
                                .signed("tarnpost.example", "07:27:00+01:00", false, true, "from", "subject", "date")
                                .photo("Ostrea", "Ostrea 3", exif("07:25:00"))),
                story(
                        "no capture time, but signed before the window opened",
                        "outside EARLY inside untimed",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .arrived("07:24:30+01:00")
                                .signed("tarnpost.example", "07:15:00+01:00")
                                .photo("", "")),
                story(
                        "a signature dated after the arrival is set aside",
                        "inside inside conflict",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .arrived("07:27:00+01:00")
                                .signed("tarnpost.example", "07:40:00+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("07:25:00", "+01:00"))),
                story(
                        "the time on the cassette narrows the slot",
                        "inside inside",
                        Scene.slot("07:00:00+01:00")
                                .onCassette("07:03")
                                .program(PHONE)
                                .date("07:28:56", "+01:00")
                                .arrived("07:28:56+01:00")
                                .received("smtp.example.org", "198.51.100.24", "07:28:56+01:00")
                                .photo("Kestrel", "K5", exif("07:28:07"))),
                story(
                        "the time on the cassette differs from the timer",
                        "inside inside differs",
                        Scene.timer("07:00:00+01:00")
                                .onCassette("07:20")
                                .program(WEBMAIL)
                                .arrived("07:26:12+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("07:25:05"))),
                story(
                        "mail and cassette state different times within the slot",
                        "undetermined inside conflict!",
                        Scene.slot("07:00:00+01:00")
                                .stated("07:03:00")
                                .onCassette("07:12")
                                .program(WEBMAIL)
                                .arrived("07:29:12+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("07:28:05", "+01:00"))),
                story(
                        "two photos of two phones: the one in the window governs",
                        "inside inside",
                        Scene.timer("07:00:00+01:00")
                                .program(PHONE)
                                .date("07:27:00", "+01:00")
                                .arrived("07:27:10+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("07:09:00"))
                                .photo("Kestrel", "K5", exif("07:25:00"))),
                story(
                        "two messages of two phones: the one in the window governs",
                        "inside inside",
                        Scene.timer("07:00:00+01:00")
                                .program(PHONE)
                                .date("07:09:40", "+01:00")
                                .arrived("07:10:00+01:00")
                                .photo("Kestrel", "K5", exif("07:09:00"))
                                .then()
                                .program("Ostrea Post 5.1 (Ostrea 3; phone)")
                                .date("07:26:40", "+01:00")
                                .arrived("07:27:00+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("07:25:00"))),
                story(
                        "a colleague with the same model forwards",
                        "inside inside",
                        Scene.timer("07:00:00+01:00")
                                .program(PHONE)
                                .date("07:40:00", "+01:00")
                                .arrived("07:40:05+01:00")
                                .photo("Kestrel", "K5", exif("07:25:00"))),
                story(
                        "internal hops above the boundary",
                        "inside inside",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .received("mx.skarrasound.example", "10.1.2.3", "07:58:00+01:00")
                                .received("mx.skarrasound.example", "127.0.0.1", "07:57:00+01:00")
                                .arrived("07:27:00+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("07:25:00"))),
                story(
                        "a line below the boundary that bears our name",
                        "inside undetermined softened",
                        Scene.timer("07:00:00+01:00")
                                .program(WEBMAIL)
                                .arrived("08:27:00+01:00")
                                .received("mx.skarrasound.example", "192.0.2.1", "07:30:00+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("07:25:00"))),
                story(
                        "hops that run backwards prove nothing",
                        "inside inside",
                        Scene.timer("07:00:00+01:00")
                                .program(PHONE)
                                .date("07:26:00", "+01:00")
                                .arrived("07:26:10+01:00")
                                .received("b.example", "192.0.2.1", "07:00:00+01:00")
                                .received("a.example", "192.0.2.1", "07:40:00+01:00")
                                .photo("Kestrel", "K5", exif("07:25:00"))),
                story(
                        "a server 1 min ahead is no contradiction",
                        "inside inside",
                        Scene.timer("07:00:00+01:00")
                                .program(PHONE)
                                .date("07:26:00", "+01:00")
                                .arrived("07:26:10+01:00")
                                .received("a.example", "192.0.2.1", "07:27:05+01:00")
                                .photo("Kestrel", "K5", exif("07:25:00"))));
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
        told.append(j.statedDiffers().isPresent() ? " differs" : "");
        told.append(j.noCaptureTime() ? " untimed" : "");
        j.phoneClock().ifPresent(c -> told.append(c.fast() ? " fast" : " slow"));
        return told.toString();
    }
}
