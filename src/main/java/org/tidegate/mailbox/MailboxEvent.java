package org.tidegate.mailbox;

import java.time.Duration;

/** What a watcher tells while it works, for log and console. */
public sealed interface MailboxEvent {

    /** Plain English for the operator. */
    String words();

    record Connected(String account, String folder, long uidValidity) implements MailboxEvent {
        @Override
        public String words() {
            return "Connected to " + account + ", folder " + folder + ".";
        }
    }

    record ValidityChanged(String account, long before, long now) implements MailboxEvent {
        @Override
        public String words() {
            return "The server numbered the folder of " + account + " anew (UIDVALIDITY " + before + " to " + now
                    + "); messages seen before are recognised by their bytes.";
        }
    }

    record Taken(Sighting sighting, Intake.Receipt receipt, int bytes) implements MailboxEvent {
        @Override
        public String words() {
            return "Took message " + sighting.uid() + " of " + sighting.folder() + ", " + bytes + " bytes.";
        }
    }

    record Marked(String account, String folder, int count) implements MailboxEvent {
        @Override
        public String words() {
            return "Marked " + count + (count == 1 ? " message" : " messages") + " of " + folder + " as taken.";
        }
    }

    record Skipped(String account, long uid, String why) implements MailboxEvent {
        @Override
        public String words() {
            return "Message " + uid + " of " + account + " was not taken: " + why;
        }
    }

    record Lost(String account, String why, Duration pause) implements MailboxEvent {
        @Override
        public String words() {
            return "The connection to " + account + " failed (" + why + "); next try in " + pause.toSeconds() + " s.";
        }
    }
}
