package org.tidegate.examination.linkage;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidegate.booking.Appointment;
import org.tidegate.finding.PictureFinding.Bearer;

class DocumentComparisonTest {

    private final DocumentComparison documents = new DocumentComparison(Nicknames.standard());

    /** Transliterations by ICAO Doc 9303-3 section 6 (Ä AE, Ø OE, ß SS, Þ TH; Cyrillic table 6.B); invented persons. */
    @ParameterizedTest
    @CsvSource({
        "ROBIN,      STRAKER,       880312, Robin,   Straker,        1988-03-12, YES",
        "ROBIN ADA,  STRAKER,       880312, Robin,   Straker,        1988-03-12, YES",
        "JOERG,      MUELLER,       880312, Jörg,    Müller,         1988-03-12, YES",
        "SOEREN,     WEISS,         880312, Søren,   Weiß,           1988-03-12, YES",
        "THORA,      AEGISDOTTIR,   880312, Þóra,    Ægisdóttir,     1988-03-12, YES",
        "IULIIA,     SHCHERBAK,     880312, Юлия,    Щербак,         1988-03-12, YES",
        "NIAMH,      O CONNOR,      880312, Niamh,   O'Connor,       1988-03-12, YES",
        "NIAMH,      OCONNOR,       880312, Niamh,   O'Connor,       1988-03-12, YES",
        "JAN,        VAN DER BERG,  880312, Jan,     van der Berg,   1988-03-12, YES",
        "LUCIE,      KELSO REY,     880312, Lucie,   Kelso-Rey,      1988-03-12, YES",
        "ROBIN,      HAVENOCK,      880312, Robin,   Straker,        1988-03-12, UNREAD",
        "MARINA,     STRAKER,       880312, Maria,   Straker,        1988-03-12, UNREAD",
        "ROBIN,      STRAKFR,       880312, Robin,   Straker,        1988-03-12, UNREAD",
        "ROBIN,      STRAKER,       881203, Robin,   Straker,        1988-03-12, UNREAD",
        "ROBIN,      STRAKER,       890312, Robin,   Straker,        1988-03-12, UNREAD",
        "ROBIN,      STRAKER,       88<<<<, Robin,   Straker,        1988-03-12, UNREAD",
        "ROBIN,      STRAKER,       880312, Robin,   Straker,        ,           UNREAD",
        "XIAOMING,   WANG,          880312, 小明,    王,             1988-03-12, YES",
        "HIU MING,   WONG,          880312, 小明,    王,             1988-03-12, UNREAD",
        "ROBIN,      STRAKER,       610729, Robin,   Straker,        1988-03-12, NO",
        "OMAR,       DUNLARE,       880312, Robin,   Straker,        1988-03-12, NO",
        "OMAR,       DUNLARE,       910405, Robin,   Straker,        1988-03-12, NO",
        "OMAR,       DUNLARE,       910405, Robin,   Straker,        ,           NO",
    })
    void tellsTheBookedPersonFromAnother(
            String given, String surname, String birth, String bookedGiven, String family, LocalDate born, String is) {
        Bearer bearer = new Bearer(surname, given, birth);
        assertThat(documents
                        .compare(bearer, booked(bookedGiven, family, Optional.ofNullable(born)))
                        .agreement())
                .isEqualTo(DocumentAgreement.valueOf(is));
    }

    private static Appointment booked(String given, String family, Optional<LocalDate> born) {
        OffsetDateTime start = OffsetDateTime.parse("2026-05-04T07:00:00+01:00");
        return new Appointment(
                "SK-1",
                given,
                family,
                born,
                Optional.empty(),
                "QUAY",
                start,
                start.plusMinutes(30),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
