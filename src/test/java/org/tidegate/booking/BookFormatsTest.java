package org.tidegate.booking;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** The same booking in three formats is the same test. */
class BookFormatsTest {

    private static final String CSV = """
            ref,given_name,family_name,date_of_birth,email,clinic,slot_start,slot_end,kit,lot,mark,lot_expires
            SK-1,Una Mae,Tarnwick,1991-10-31,una@tarn.example,QUAY,2026-05-04T07:00:00+01:00,2026-05-04T07:15:00+01:00,SKERRY-20,SK1,K7PX,2026-09-30
            """;

    private static final String JSON = """
            [
              {"ref": "SK-1", "given_name": "Una Mae", "family_name": "Tarnwick", "date_of_birth": "1991-10-31",
               "email": "una@tarn.example", "clinic": "QUAY", "slot_start": "2026-05-04T07:00:00+01:00",
               "slot_end": "2026-05-04T07:15:00+01:00", "kit": "SKERRY-20", "lot": "SK1", "mark": "K7PX",
               "lot_expires": "2026-09-30", "attempt": 1, "observed": null}
            ]
            """;

    private static final String CALENDAR = """
            BEGIN:VCALENDAR
            VERSION:2.0
            PRODID:-//Skarra Sound//Bookings//EN
            BEGIN:VEVENT
            UID:SK-1
            DTSTAMP:20260501T080000Z
            DTSTART;TZID=Europe/London:20260504T070000
            DTEND;TZID=Europe/London:20260504T071500
            LOCATION:QUAY
            ATTENDEE;CN="Una Mae Tarnwick":mailto:una@tarn.example
            X-TIDEGATE-DATE-OF-BIRTH:1991-10-31
            X-TIDEGATE-KIT:SKERRY-20
            X-TIDEGATE-LOT:SK1
            X-TIDEGATE-LOT-EXPIRES:2026-09-30
            X-TIDEGATE-MARK:K7PX
            END:VEVENT
            BEGIN:VEVENT
            UID:SK-2
            DTSTAMP:20260501T080000Z
            DTSTART:20260504T060000Z
            STATUS:CANCELLED
            END:VEVENT
            END:VCALENDAR
            """.replace("\n", "\r\n");

    @Test
    void jsonSaysTheSame() {
        assertThat(read(JSON).book()).isEqualTo(read(CSV).book());
    }

    @Test
    void iCalendarSaysTheSame() {
        assertThat(read(CALENDAR).book()).isEqualTo(read(CSV).book());
        assertThat(read(CALENDAR).warnings())
                .extracting(BookFault::toString)
                .containsExactly(
                        "line 4: family_name: was told from the attendee's name (X-TIDEGATE-… says it surely)",
                        "line 17: a cancelled event was left out");
    }

    @Test
    void iCalendarTimesWithoutAZoneAreRefused() {
        String floating = CALENDAR.replace(";TZID=Europe/London", "");
        assertThat(BookReader.read(floating.getBytes(StandardCharsets.UTF_8))).isInstanceOf(BookResult.Faulty.class);
    }

    @Test
    void iCalendarTimesInUtcAreTaken() {
        String utc = CALENDAR.replace(";TZID=Europe/London:20260504T070000", ":20260504T060000Z");
        assertThat(read(utc).book().tests().get(0).appointment().slotStart())
                .isEqualTo(read(CSV).book().tests().get(0).appointment().slotStart());
    }

    private static BookResult.Read read(String text) {
        BookResult result = BookReader.read(text.getBytes(StandardCharsets.UTF_8));
        assertThat(result).isInstanceOf(BookResult.Read.class);
        return (BookResult.Read) result;
    }
}
