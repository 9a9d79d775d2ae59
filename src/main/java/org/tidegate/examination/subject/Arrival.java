package org.tidegate.examination.subject;

import java.time.LocalDate;
import java.time.LocalDateTime;

/** When the message came, in the clinic's wall time. */
record Arrival(LocalDateTime wall) {

    LocalDate day() {
        return wall.toLocalDate();
    }
}
