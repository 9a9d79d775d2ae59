package org.tidegate.console;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.tidegate.booking.TestRecord;
import org.tidegate.casework.SilentTest;
import org.tidegate.casework.SilentTest.Step;
import org.tidegate.examination.timing.TimeJudgement.ClockTimes;
import org.tidegate.work.SubmissionId;

/**
 * One test of which nothing came, in words.
 *
 * @param look {@code over} or nothing: how the row is marked
 * @param windows the clock times of its windows
 * @param left how much time is left to send
 * @param level the part of its time that is left, in tenths
 * @param todo what to do
 * @param perhaps numbers of submissions that may be it
 * @param letter state of the reminder; empty where there is none
 * @param phone to call; empty where none is booked
 */
record SilentLine(
        String key,
        String look,
        String who,
        String test,
        String windows,
        String left,
        int level,
        String todo,
        boolean remind,
        boolean observe,
        List<Long> perhaps,
        String letter,
        String phone) {

    /** A bar is full with this much time left. */
    private static final Duration FULL = Duration.ofMinutes(30);

    static SilentLine of(SilentTest s, Instant now, Words words) {
        TestRecord t = s.test();
        Instant limit = s.windows().latest().sendBy();
        Duration left = Duration.between(now, limit);
        boolean over = s.step() == Step.OVER;
        return new SilentLine(
                t.key().toString(),
                over ? "over" : "",
                t.appointment().fullName(),
                t.key() + " · " + t.appointment().clinic() + " · "
                        + words.say(
                                "queue.slot",
                                words.dateAndTime(t.appointment().slotStart().toInstant())),
                windows(s, words),
                words.left(limit, now),
                (int) Math.max(0, Math.min(10, Math.ceil(10.0 * left.toSeconds() / FULL.toSeconds()))),
                words.say("silent.step." + s.step().name().toLowerCase(java.util.Locale.ROOT)),
                s.step() == Step.REMIND,
                !over,
                s.perhaps().stream().map(SubmissionId::value).toList(),
                s.reminder().map(l -> words.say("outbox." + l.state().code())).orElse(""),
                t.appointment().phone().orElse(""));
    }

    private static String windows(SilentTest s, Words words) {
        ClockTimes first = s.windows().earliest();
        ClockTimes last = s.windows().latest();
        String key = s.windows().timed() ? "silent.windows" : "silent.windows-about";
        return words.say(key, words.clock(first.from()), words.clock(last.until()), words.clock(last.sendBy()));
    }
}
