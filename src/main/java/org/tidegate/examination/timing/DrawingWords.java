package org.tidegate.examination.timing;

import org.tidegate.finding.Clock;
import org.tidegate.finding.Event;

/** What stands in a drawing, in one language. */
interface DrawingWords {

    /** Whose clock a lane is. */
    String lane(Clock clock);

    /** What happened: {@code photo}, {@code sent}, … */
    String event(Event event);

    /** Over the reading window; both are clock times. */
    String photograph(String from, String until);

    /** At the limit of sending. */
    String sendBy(String limit);

    /** Behind the name of a clock that is proven wrong. */
    String wrongBy(TimeJudgement.PhoneClockError error);

    /** For operators, readers and auditors. */
    DrawingWords ENGLISH = new DrawingWords() {

        @Override
        public String lane(Clock clock) {
            return switch (clock.kind()) {
                case CLINIC -> "the clinic's record";
                case OWN_SERVER -> "our mail server";
                case OTHER_SERVER -> clock.name();
                case PHONE -> "the clock of the " + clock.name();
                case SATELLITE -> "GPS";
                case WORDS -> "the participant's words";
            };
        }

        @Override
        public String event(Event event) {
            return switch (event.kind()) {
                case TEST -> "test";
                case PHOTO -> "photo";
                case SENT -> "sent";
                case HOP -> "taken over";
                case SIGNED -> "signed";
                case ARRIVED -> "arrived";
                case EPOCH, DEVICE_ZERO -> "";
            };
        }

        @Override
        public String photograph(String from, String until) {
            return "time for the photo " + from + "–" + until;
        }

        @Override
        public String wrongBy(TimeJudgement.PhoneClockError error) {
            return " (" + error.span() + ")";
        }

        @Override
        public String sendBy(String limit) {
            return "send by " + limit;
        }
    };
}
