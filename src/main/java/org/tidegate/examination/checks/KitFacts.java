package org.tidegate.examination.checks;

import java.time.LocalDate;
import java.util.Optional;
import org.tidegate.booking.TestRecord;

/** The kit in the book, and what the reader wrote down from the cassette. */
final class KitFacts {

    private KitFacts() {}

    static void add(CheckInput in, FactSheet sheet) {
        Optional<TestRecord> test = in.test();
        sheet.fact(
                "kit_known",
                test.map(t -> in.rules().protocol(t.kit()).isPresent()).orElse(true));
        sheet.fact("lot_expired", test.map(t -> expired(t, in)).orElse(false));
        sheet.fact(
                "lot_quarantined",
                test.flatMap(TestRecord::lot)
                        .map(in.standing().quarantinedLots()::contains)
                        .orElse(false));
        test.ifPresent(t -> {
            sheet.figure("kit", t.kit());
            sheet.figure("lot", t.lot().orElse("unknown"));
            sheet.figure("lot_expires", t.lotExpires().map(LocalDate::toString).orElse("unknown"));
            sheet.figure("mark", t.mark().orElse("none"));
        });
        transcribed(in, sheet);
    }

    private static boolean expired(TestRecord t, CheckInput in) {
        LocalDate day = t.appointment()
                .slotStart()
                .atZoneSameInstant(in.rules().timing().zone())
                .toLocalDate();
        return t.lotExpires().map(day::isAfter).orElse(false);
    }

    private static void transcribed(CheckInput in, FactSheet sheet) {
        Optional<Transcription> read = in.standing().transcription();
        Optional<TestRecord> test = in.test();
        sheet.fact("lot_agrees", agrees(read.flatMap(Transcription::lot), test.flatMap(TestRecord::lot)));
        sheet.fact("mark_agrees", agrees(read.flatMap(Transcription::mark), test.flatMap(TestRecord::mark)));
        sheet.fact("cassette_marked", read.map(Transcription::marked).orElse(true));
        sheet.figure("read_lot", read.flatMap(Transcription::lot).orElse("none"));
        sheet.figure("read_mark", read.flatMap(Transcription::mark).orElse("none"));
    }

    private static String agrees(Optional<String> read, Optional<String> booked) {
        if (read.isEmpty() || booked.isEmpty()) {
            return "unstated";
        }
        return plain(read.get()).equals(plain(booked.get())) ? "yes" : "no";
    }

    private static String plain(String s) {
        return s.replaceAll("[\\s-]", "").toUpperCase(java.util.Locale.ROOT);
    }
}
