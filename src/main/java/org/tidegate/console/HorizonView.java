package org.tidegate.console;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.tidegate.report.Horizon;
import org.tidegate.report.Pace;

/**
 * The outlook in words.
 *
 * @param clear when nothing waits any more
 * @param more how many more people would keep every promise that can be kept
 * @param basis what it rests on
 * @param late who will be answered later than promised
 */
record HorizonView(
        int people,
        String waiting,
        String clear,
        String breaks,
        String more,
        String steady,
        String basis,
        boolean bad,
        List<Late> late) {

    /** One that waits too long. */
    record Late(long id, String number, String promised, String expected) {}

    static HorizonView of(Horizon h, Words words) {
        return new HorizonView(
                h.people(),
                words.say("horizon.waiting", h.waiting(), h.overdue()),
                h.clear()
                        .map(t -> words.say("horizon.clear", words.clock(t), words.relative(t, h.now())))
                        .orElseGet(() -> words.say("horizon.never", words.clock(h.until()))),
                h.willBreak() == 0
                        ? words.say("horizon.kept")
                        : words.say("horizon.breaks", h.willBreak(), words.clock(h.until())),
                more(h, words),
                words.say("horizon.steady", figure(h.rate()), Math.round(100 * h.waits()), h.needed()),
                basis(h.pace(), words),
                h.willBreak() > 0 || h.clear().isEmpty(),
                h.late().stream().map(l -> late(l, h.now(), words)).toList());
    }

    private static String more(Horizon h, Words words) {
        return h.more()
                .map(n -> n == 0 ? "" : words.say("horizon.more", n))
                .orElseGet(() -> words.say("horizon.no-number"));
    }

    private static String basis(Pace pace, Words words) {
        String arrivals =
                pace.days() == 0 ? words.say("horizon.basis-recent") : words.say("horizon.basis-days", pace.days());
        String handling = words.exactAmount(pace.handling());
        return arrivals + " "
                + (pace.pieces() == 0
                        ? words.say("horizon.basis-assumed", handling)
                        : words.say("horizon.basis-pieces", handling, pace.pieces()));
    }

    private static String figure(double rate) {
        return String.format(Locale.ROOT, "%.1f", rate);
    }

    private static Late late(Horizon.Late l, Instant now, Words words) {
        return new Late(
                l.id().value(),
                l.id().toString(),
                words.clock(l.promised()),
                words.clock(l.expected()) + ", " + words.relative(l.expected(), now));
    }
}
