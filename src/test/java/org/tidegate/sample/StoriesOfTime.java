package org.tidegate.sample;

import static org.tidegate.sample.Bookings.*;
import static org.tidegate.sample.Shot.*;

import java.util.List;

/** Stories whose point is the time. */
final class StoriesOfTime {

    private StoriesOfTime() {}

    static List<Story> all() {
        return List.of(
                new Draft("10-read-early.eml", ERLEND, "07:33", "07:47:00")
                        .photo(CASSETTE_AND_CARD, "07:46:10", 10)
                        .held(
                                "outside",
                                "inside",
                                "Erlend photographed after 13 minutes; the window opens after 20.",
                                "read-early"),
                new Draft("11-read-late.eml", BRONWEN, "07:36", "08:19:30")
                        .photo(CASSETTE_AND_CARD, "08:18:00", 11)
                        .held(
                                "outside",
                                "inside",
                                "Bronwen photographed after 42 minutes; the window closes after 30.",
                                "read-late"),
                new Draft("12-sent-late.eml", LUKASZ, "07:49", "09:05:00")
                        .photo(CASSETTE_AND_CARD, "08:14:00", 12)
                        .held(
                                "inside",
                                "outside",
                                "Łukasz photographed in time and forgot to send for an hour.",
                                "late"),
                new Draft("13-late-in-transit.eml", FIONA, "07:47", "08:13:30")
                        .photo(CASSETTE_AND_CARD, "08:12:20", 13)
                        .queuedFor(3600)
                        .held(
                                "inside",
                                "undetermined",
                                "Fiona sent in time; her provider sat on the message for an hour.",
                                "late-in-transit"),
                new Draft("14-photo-before-test.eml", GREGOR, "08:04", "08:30:00")
                        .photo(CASSETTE_AND_CARD, "07:40:00", 14)
                        .held(
                                "outside",
                                "inside",
                                "The photo was taken 24 minutes before the test began.",
                                "photo-before-test"),
                new Draft("15-stated-time-differs.eml", NADIA, "08:31", "08:28:00")
                        .photo(CASSETTE_AND_CARD, "08:27:00", 15)
                        .held(
                                "inside",
                                "inside",
                                "Nadia states 08:31; the observer's timer started at 08:02.",
                                "stated-time-differs"),
                new Draft("16-clocks-conflict.eml", SVEN, "08:19", "08:45:00")
                        .phoneFast(7 * 60)
                        .photo(CASSETTE_AND_CARD, "08:44:00", 16)
                        .toRead(
                                "inside",
                                "inside",
                                "Sven's phone is seven minutes fast for photo and mail alike: a note, the verdicts stand.")
                        .noting("clocks-conflict"),
                new Draft("17-time-undetermined.eml", STEFAN, "11:33", "12:04:30")
                        .phone(Phone.WEBMAIL)
                        .photo(CASSETTE_AND_CARD, "12:05:10", 17)
                        .held(
                                "undetermined",
                                "inside",
                                "The photo's clock says 32 minutes, within what a phone may be off.",
                                "time-undetermined"),
                new Draft("18-our-outage.eml", IDA, "12:19", "12:45:00")
                        .photo(CASSETTE_AND_CARD, "12:44:00", 58)
                        .queuedFor(2990)
                        .toRead(
                                "inside",
                                "undetermined",
                                "Our own mail server was down from 12:40 to 13:35; Ida's provider kept trying.")
                        .noting("our-outage"));
    }
}
