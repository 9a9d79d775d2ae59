package org.tidegate.examination.subject;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidegate.finding.SubjectReading;
import org.tidegate.rules.RulesReader;
import org.tidegate.rules.RulesResult;

class SubjectReaderTest {

    private static final SubjectReader READER = new SubjectReader(((RulesResult.Loaded) RulesReader.bundled()).rules());

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Maren Tollisker, 06:34, Quay clinic      | 06:00 | Maren Tollisker  | 2026-05-04T06:34 | QUAY
            Re: Fwd: tollisker maren 6.34 quay       | 06:00 | tollisker maren  | 2026-05-04T06:34 | QUAY
            Hamish Garvellan o9:47 heliport          | 09:10 | Hamish Garvellan | 2026-05-04T09:47 | HELI
            half nine this morning, Oskar Lindevall  | 09:00 | Oskar Lindevall  | 2026-05-04T09:30 |
            Priya Sandhurkar 2:49pm N. Pier          | 14:15 | Priya Sandhurkar | 2026-05-04T14:49 | PIER
            Rory Kinlochan berth 12 18:42 4/5        | 18:10 | Rory Kinlochan   | 2026-05-04T18:42 |
            Sven Hallqvist 10:31 CEST heli           | 09:00 | Sven Hallqvist   | 2026-05-04T09:31 | HELI
            Hallur Stuðlason 08:31 að íslenskum tíma | 09:00 | Hallur Stuðlason | 2026-05-04T09:31 |
            Степан Ковалюк 11:31 по Москве           | 09:00 | Степан Ковалюк   | 2026-05-04T09:31 |
            Ana-Mira Lupoaie 9:31 quay               | 09:00 | Ana-Mira Lupoaie | 2026-05-04T09:31 | QUAY
            Tiago Noronha Sá 9:31 quay               | 09:00 | Tiago Noronha Sá | 2026-05-04T09:31 | QUAY
            April Day 04/05/2026 9:31 QUAY           | 09:00 | April Day        | 2026-05-04T09:31 | QUAY
            QUAY-April Day-0931-4MAY                 | 09:00 | April Day        | 2026-05-04T09:31 | QUAY
            mark tollisker 9:31 quay                 | 09:00 | mark tollisker   | 2026-05-04T09:31 | QUAY
            Karim Halvik 9:31 quay                   | 09:00 | Karim Halvik     | 2026-05-04T09:31 | QUAY
            karım Jorun Halvik 9:31 quay             | 09:00 | Jorun Halvik     | 2026-05-04T09:31 | QUAY
            Om Prakash Halvik 9:31 quay              | 09:00 | Om Prakash Halvik | 2026-05-04T09:31 | QUAY
            Från Jorun Halvik 9:31 quay              | 09:00 | Jorun Halvik     | 2026-05-04T09:31 | QUAY
            Jorun Halvik 9:31-9:46 quay              | 09:00 | Jorun Halvik     | 2026-05-04T09:31 | QUAY
            Jorun Halvik 9:31 quay, 1st attempt      | 09:00 | Jorun Halvik     | 2026-05-04T09:31 | QUAY
            Jorun Halvik ten to ten ship's time quay | 09:20 | Jorun Halvik     | 2026-05-04T09:50 | QUAY
            Jorun Halvik 11:31 ship's time UTC+3     | 09:00 | Jorun Halvik     | 2026-05-04T09:31 |
            Jorun Halvik eight minutes past nine     | 08:40 | Jorun Halvik     | 2026-05-04T09:08 |
            Jorun Halvik f. 19.04.2001 9:31 quay     | 09:00 | Jorun Halvik     | 2026-05-04T09:31 | QUAY
            My son Jorun Halvik's test 9:31 quay     | 09:00 | Jorun Halvik     | 2026-05-04T09:31 | QUAY
            JORUN HALVIK’S LFT 9:31 QUAY             | 09:00 | JORUN HALVIK     | 2026-05-04T09:31 | QUAY
            Halvik F. 9:31 quay                      | 09:00 | Halvik F.        | 2026-05-04T09:31 | QUAY
            """)
    void readsWhatPeopleType(String subject, String receivedUtc, String name, LocalDateTime time, String clinic) {
        SubjectReading reading = read(subject, "", receivedUtc).get(0);
        assertThat(reading.name()).as(subject).contains(name);
        assertThat(reading.testTime()).as(subject).contains(time);
        assertThat(reading.clinic()).as(subject).isEqualTo(Optional.ofNullable(clinic));
    }

    @Test
    void aShortFormThatIsAWordElsewhereBelongsToTheSendersName() {
        StatedText text = new StatedText(
                Optional.of("Ma. Teresita Villamor 9:31 quay"),
                "",
                Optional.of("Maria Teresita Villamor"),
                Optional.of("mtv@example.org"),
                Instant.parse("2026-05-04T09:00:00Z"));
        assertThat(READER.read(text).get(0).name()).contains("Ma. Teresita Villamor");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "MV Harvoe, Jorun Halvik 9:31 quay",
                "MV Harvoe Jorun Halvik 9:31 quay",
                "Jorun Halvik MV Harvoe 9:31 quay",
                "Jorun Halvik Harvoe 9:31 quay",
                "AB Jorun Halvik 9:31 quay",
                "crew Jorun Halvik 9:31 quay"
            })
    void aShipIsNoPartOfTheName(String subject) {
        StatedText text = new StatedText(
                Optional.of(subject),
                "",
                Optional.of("MV HARVOE"),
                Optional.of("crew.mv-harvoe@example.org"),
                Instant.parse("2026-05-04T09:00:00Z"));
        assertThat(READER.read(text).get(0).name()).as(subject).contains("Jorun Halvik");
    }

    @Test
    void fallsBackToTheBodyAndSaysSo() {
        SubjectReading reading = read("my result", "Hello, I am Maren Tollisker and tested at 06:34", "06:00")
                .get(0);
        assertThat(reading.testTime()).contains(LocalDateTime.parse("2026-05-04T06:34"));
        assertThat(reading.source()).isNotEqualTo(SubjectReading.Source.SUBJECT);
    }

    @Test
    void aResultWordIsAClaimAndNoName() {
        SubjectReading reading =
                read("NEGATIVE Ingrid Solbakkmo 10:03 heli", "", "09:30").get(0);
        assertThat(reading.claim()).contains("NEGATIVE");
        assertThat(reading.name()).contains("Ingrid Solbakkmo");
    }

    @ParameterizedTest
    @CsvSource({
        "Undeliverable: your message",
        "see attached",
        "Lohnabrechnung April 2026",
        "Posiedzenie zespołu 10:30",
        "''",
        "Re:",
        "\u202e\u200b"
    })
    void saysWhenThereIsNothingToRead(String subject) {
        assertThat(read(subject, "", "06:00").get(0).readable()).isFalse();
    }

    /** Found by the fuzz target: "last night", and the only time in the line is one of the morning. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "hier soir  fatto stamattina ore 10:51 sig.ra Novella Guarna\uc138\ub77c 5\uc6d4 6\uc77c",
                "hier soir matin 10:51 Novella Guarna",
                "last night this morning 10:51 Novella Guarna"
            })
    void aTimeThatTheDayContradictsIsReadAsMissingAndTheLineStillAnswered(String subject) {
        List<SubjectReading> readings = READER.read(new StatedText(
                Optional.of(subject),
                "",
                Optional.of(subject),
                Optional.of(subject),
                Instant.parse("2026-05-04T09:00:00Z")));
        assertThat(readings)
                .isNotEmpty()
                .allSatisfy(
                        r -> assertThat(r.readable() || !r.problems().isEmpty()).isTrue());
        assertThat(readings.get(0).name()).isPresent();
    }

    @Test
    void aMegabyteOfNoiseIsReadWithinBounds() {
        assertThat(read("9:1 ".repeat(250_000), "", "06:00")).isNotEmpty();
    }

    private static List<SubjectReading> read(String subject, String body, String receivedUtc) {
        Instant received = Instant.parse("2026-05-04T" + receivedUtc + ":00Z");
        return READER.read(new StatedText(Optional.of(subject), body, Optional.empty(), Optional.empty(), received));
    }
}
