package org.tidegate.examination.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tidegate.examination.timing.Scene.exif;

import java.time.ZoneId;
import java.time.zone.ZoneOffsetTransition;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Days and hours at which clocks jump. In the United Kingdom summer time begins and ends at 01:00 Greenwich mean time on the last Sundays
 * of March and October (The Summer Time Order 2002, SI 2002/262, article 2; from memory): in 2026 on 29 March and 25 October.
 */
class CalendarEdgesTest {

    private static final String PHONE = "Kestrel Mail 8.2 (K5; phone)";
    private static final String WEBMAIL = "Brae Webmail 3.2";

    @Test
    void theZoneRulesOfThisMachineAreThoseOfTheOrder() {
        assertThat(ZoneId.of("Europe/London").getRules().getTransitions()).isNotEmpty();
        assertThat(Stream.of("2026-03-29T00:59:59Z", "2026-10-25T00:59:59Z")
                        .map(java.time.Instant::parse)
                        .map(t -> ZoneId.of("Europe/London").getRules().nextTransition(t))
                        .map(ZoneOffsetTransition::getInstant))
                .extracting(Object::toString)
                .containsExactly("2026-03-29T01:00:00Z", "2026-10-25T01:00:00Z");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"theHourThatOccursTwice", "theHourThatDoesNotExist", "daysThatEnd", "journeys"})
    void judgesTheStory(String story, Scene scene, String expected) {
        TimeJudgement j = scene.judge();
        assertThat(j.photo().orElseThrow().verdict().code()
                        + j.side().map(s -> " " + s).orElse("") + " "
                        + j.sent().verdict().code())
                .as("%s%n%s", story, j)
                .isEqualTo(expected);
    }

    /** 25 October 2026: 01:00 to 02:00 first with +01:00, then with +00:00. */
    static Stream<Arguments> theHourThatOccursTwice() {
        return Stream.of(
                story(
                        "test before, photo after the clocks went back",
                        "inside inside",
                        Scene.timer("2026-10-25T01:40:00+01:00")
                                .program(PHONE)
                                .date("2026-10-25T01:06:00", "+00:00")
                                .arrived("2026-10-25T01:06:10+00:00")
                                .photo("Kestrel", "K5", exif("2026-10-25T01:05:00"))),
                story(
                        "all in the first of the two hours",
                        "inside inside",
                        Scene.timer("2026-10-25T01:10:00+01:00")
                                .program(PHONE)
                                .date("2026-10-25T01:36:00", "+01:00")
                                .arrived("2026-10-25T01:36:10+01:00")
                                .photo("Kestrel", "K5", exif("2026-10-25T01:35:00"))),
                story(
                        "photo before, mail after",
                        "inside inside",
                        Scene.timer("2026-10-25T01:30:00+01:00")
                                .program(PHONE)
                                .date("2026-10-25T01:02:00", "+00:00")
                                .arrived("2026-10-25T01:02:10+00:00")
                                .photo("Kestrel", "K5", exif("2026-10-25T01:55:00"))),
                story(
                        "webmail, photo after",
                        "inside inside",
                        Scene.timer("2026-10-25T01:40:00+01:00")
                                .program(WEBMAIL)
                                .arrived("2026-10-25T01:06:12+00:00")
                                .photo("Ostrea", "Ostrea 3", exif("2026-10-25T01:05:00"))),
                story(
                        "webmail, read early: the second hour lies after the arrival",
                        "outside EARLY inside",
                        Scene.timer("2026-10-25T01:40:00+01:00")
                                .program(WEBMAIL)
                                .arrived("2026-10-25T01:53:00+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("2026-10-25T01:52:00"))),
                story(
                        "stated in the second hour",
                        "inside inside",
                        Scene.slot("2026-10-25T01:30:00+00:00")
                                .stated("2026-10-25T01:40:00")
                                .program(WEBMAIL)
                                .arrived("2026-10-25T02:06:12+00:00")
                                .photo("Ostrea", "Ostrea 3", exif("2026-10-25T02:05:00"))));
    }

    /** 29 March 2026: no clock of the clinic's zone shows 01:00 to 02:00. */
    static Stream<Arguments> theHourThatDoesNotExist() {
        return Stream.of(
                story(
                        "test before, photo after the clocks went forward",
                        "inside inside",
                        Scene.timer("2026-03-29T00:45:00+00:00")
                                .program(PHONE)
                                .date("2026-03-29T02:11:00", "+01:00")
                                .arrived("2026-03-29T02:11:10+01:00")
                                .photo("Kestrel", "K5", exif("2026-03-29T02:10:00"))),
                story(
                        "a phone that missed the change",
                        "inside inside",
                        Scene.timer("2026-03-29T00:45:00+00:00")
                                .program(PHONE)
                                .date("2026-03-29T01:11:00", "+00:00")
                                .arrived("2026-03-29T02:11:10+01:00")
                                .photo("Kestrel", "K5", exif("2026-03-29T01:10:00"))),
                story(
                        "webmail, a camera that missed the change",
                        "inside inside",
                        Scene.timer("2026-03-29T00:45:00+00:00")
                                .program(WEBMAIL)
                                .arrived("2026-03-29T02:11:10+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("2026-03-29T01:10:00"))),
                story(
                        "stated in the hour that does not exist",
                        "inside inside",
                        Scene.slot("2026-03-29T02:00:00+01:00")
                                .stated("2026-03-29T01:15:00")
                                .program(WEBMAIL)
                                .arrived("2026-03-29T02:41:12+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("2026-03-29T02:40:00"))));
    }

    static Stream<Arguments> daysThatEnd() {
        return Stream.of(
                story(
                        "over midnight",
                        "inside inside",
                        Scene.timer("2026-05-04T23:50:00+01:00")
                                .program(WEBMAIL)
                                .arrived("2026-05-05T00:16:00+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("2026-05-05T00:15:00"))),
                story(
                        "over midnight, stated without a date",
                        "inside inside",
                        Scene.slot("2026-05-04T23:45:00+01:00")
                                .stated("2026-05-05T23:50:00")
                                .program(WEBMAIL)
                                .arrived("2026-05-05T00:16:00+01:00")
                                .photo("Ostrea", "Ostrea 3", exif("2026-05-05T00:15:00"))),
                story(
                        "from the leap day into March",
                        "inside inside",
                        Scene.timer("2028-02-29T23:50:00+00:00")
                                .program(PHONE)
                                .date("2028-03-01T00:16:00", "+00:00")
                                .arrived("2028-03-01T00:16:10+00:00")
                                .photo("Kestrel", "K5", exif("2028-03-01T00:15:00"))),
                story(
                        "a photo of the day before the leap day",
                        "outside BEFORE_TEST inside",
                        Scene.timer("2028-03-01T00:00:00+00:00")
                                .program(WEBMAIL)
                                .arrived("2028-03-01T00:26:10+00:00")
                                .photo("Ostrea", "Ostrea 3", exif("2028-02-28T00:25:00", "+00:00"))),
                story(
                        "over the year's end",
                        "inside inside",
                        Scene.timer("2026-12-31T23:50:00+00:00")
                                .program(WEBMAIL)
                                .arrived("2027-01-01T00:16:00+00:00")
                                .photo("Ostrea", "Ostrea 3", exif("2027-01-01T00:15:00"))));
    }

    /** A phone that changes its zone between photo and mail: on a ferry, in flight. */
    static Stream<Arguments> journeys() {
        return Stream.of(
                story(
                        "photo with its zone, mail in the next one",
                        "inside inside",
                        Scene.timer("07:04:00+01:00")
                                .program(PHONE)
                                .date("07:30:10", "+01:00")
                                .arrived("07:30:20+01:00")
                                .photo("Kestrel", "K5", exif("08:28:30", "+02:00"))),
                story(
                        "eastern photo without its zone: nothing is concluded",
                        "undetermined inside",
                        Scene.timer("07:04:00+01:00")
                                .program(PHONE)
                                .date("07:30:10", "+01:00")
                                .arrived("07:30:20+01:00")
                                .photo("Kestrel", "K5", exif("08:28:30"))),
                story(
                        "western photo without its zone: nothing is concluded against it",
                        "undetermined inside",
                        Scene.timer("07:04:00+01:00")
                                .program(PHONE)
                                .date("07:30:10", "+01:00")
                                .arrived("07:30:20+01:00")
                                .photo("Kestrel", "K5", exif("06:28:30"))),
                story(
                        "too early in whatever zone",
                        "outside EARLY inside",
                        Scene.timer("07:00:00+01:00")
                                .program(PHONE)
                                .date("07:30:10", "+01:00")
                                .arrived("07:30:20+01:00")
                                .photo("Kestrel", "K5", exif("07:12:00"))));
    }

    private static Arguments story(String story, String expected, Scene scene) {
        return Arguments.of(story, scene, expected);
    }
}
