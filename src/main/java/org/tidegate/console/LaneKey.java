package org.tidegate.console;

import java.util.Locale;
import java.util.Optional;
import org.tidegate.casework.QueueRow;
import org.tidegate.work.SubmissionState;

/** The lanes as the page shows them, in its order. */
enum LaneKey {
    URGENT,
    SAVABLE,
    REST,
    OVERDUE,
    CORRESPONDENCE,
    TO_READ;

    static LaneKey of(QueueRow row) {
        if (row.urgent()) {
            return URGENT;
        }
        if (row.state() == SubmissionState.TO_READ) {
            return TO_READ;
        }
        return switch (row.lane()) {
            case SAVABLE -> SAVABLE;
            case REST -> REST;
            case OVERDUE -> OVERDUE;
            case CORRESPONDENCE -> CORRESPONDENCE;
        };
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Optional<LaneKey> ofCode(String code) {
        for (LaneKey key : values()) {
            if (key.code().equals(code)) {
                return Optional.of(key);
            }
        }
        return Optional.empty();
    }
}
