package org.tidegate.sample;

import static org.tidegate.sample.Bookings.*;
import static org.tidegate.sample.Shot.*;

import java.util.List;

/** Stories whose point is who wrote, and which test it belongs to. */
final class StoriesOfPeople {

    private StoriesOfPeople() {}

    private static final Booking STRANGER =
            Booking.of("SS-XXXX", "Corin", "Wetherlam", "corin.wetherlam@brinemail.example", "QUAY", "09:00");

    static List<Story> all() {
        return List.of(
                new Draft("20-out-of-office.eml", ALICE, "08:17", "08:20:00")
                        .subject("Automatic reply: your appointment")
                        .header("Auto-Submitted", "auto-replied")
                        .body("I am at sea until Thursday and will answer then.")
                        .aside("An absence note."),
                new Draft("21-bounce.eml", ALICE, "08:17", "08:21:00")
                        .from("Mail Delivery", "postmaster@tarnpost.example")
                        .subject("Undeliverable: your appointment")
                        .header("Auto-Submitted", "auto-generated (failure)")
                        .body("The message could not be delivered to one recipient.")
                        .aside("A delivery report."),
                new Draft("22-newsletter.eml", ALICE, "08:17", "08:22:00")
                        .from("Harbour Notes", "news@harbournotes.example")
                        .subject("Harbour notes for May")
                        .header("List-Id", "<notes.harbournotes.example>")
                        .header("List-Unsubscribe", "<mailto:leave@harbournotes.example>")
                        .body("Tides, timetables and a recipe for fish soup.")
                        .aside("A newsletter."),
                new Draft("23-question.eml", ALICE, "08:17", "08:25:00")
                        .subject("Where do I park?")
                        .body("Good morning,\n\nis there parking at the pier?\n\nAlice Penrothen")
                        .held("-", "-", "Alice asks a question; her address is booked once.", "correspondence"),
                new Draft("24-worried.eml", RORY, "08:33", "08:50:00")
                        .subject("please help")
                        .body(
                                "I did the test this morning and now I have chest pain and can't breathe properly. What should I do?\n\nRory Kinlochan")
                        .held(
                                "-",
                                "-",
                                "Rory writes without a photo; he needs help, not a letter about pictures.",
                                "correspondence",
                                "urgent-words"),
                new Draft("25-unreadable-subject.eml", MEI, "08:35", "09:00:20")
                        .subject("my picture")
                        .from("M", MEI.email())
                        .body("see attached")
                        .photo(CASSETTE_AND_CARD, "08:59:10", 25)
                        .held(
                                "inside",
                                "inside",
                                "Neither name nor time can be read anywhere; the booked address tells whose it is.",
                                "subject-unreadable"),
                new Draft("26-no-appointment.eml", STRANGER, "09:02", "09:28:00")
                        .photo(CASSETTE_AND_CARD, "09:27:00", 126)
                        .unmatched("none", "Corin is not in the book.", "no-appointment"),
                new Draft("27-namesakes.eml", DAVID_ELDER, "08:49", "09:14:30")
                        .subject("D Strathmoor, Quay clinic 08:49")
                        .photo(CASSETTE_AND_CARD, "09:13:20", 27)
                        .unmatched(
                                "ambiguous",
                                "Father and son of one name share slot and address.",
                                "appointment-unclear"),
                new Draft("28-dmarc-fail.eml", JOHANNA, "09:04", "09:30:00")
                        .dmarc("fail")
                        .photo(CASSETTE_AND_CARD, "09:29:00", 28)
                        .held(
                                "inside",
                                "inside",
                                "The sender's domain disowns the message.",
                                "sender-not-authenticated"),
                new Draft("29-forwarded-by-colleague.eml", PETROS, "09:02", "09:29:30")
                        .subject("Fwd: Petros Kalamidis 9:02 North Pier")
                        .from("Crew desk", "crewdesk@brinemail.example")
                        .photo(CASSETTE_AND_CARD, "09:27:30", 29)
                        .toRead("inside", "inside", "A colleague at the crew desk forwards Petros's photo.")
                        .noting("sender-unknown"),
                new Draft("30-other-clinic.eml", WILMA, "09:18", "09:44:00")
                        .subject("Wilma Dunrossan 09:18 Quay")
                        .photo(CASSETTE_AND_CARD, "09:43:00", 30)
                        .toRead("inside", "inside", "Wilma names another clinic than she is booked at: a note.")
                        .noting("clinic-differs"),
                new Draft("31-not-observed.eml", SEAN, "11:03", "11:29:00")
                        .photo(CASSETTE_AND_CARD, "11:28:00", 31)
                        .held("inside", "inside", "The book says that nobody observed the test.", "not-observed"),
                new Draft("32-missing-id-first.eml", TARIQ, "09:20", "09:45:50")
                        .photo(CASSETTE_ALONE, "09:44:40", 132)
                        .held("inside", "inside", "Tariq forgot his card.", "no-id"),
                new Draft("33-missing-id-second.eml", TARIQ, "09:20", "09:58:00")
                        .subject("Re: Tariq Mahfoudi, 09:20, Heliport clinic")
                        .inReplyTo("32-missing-id-first@tarnpost.example")
                        .body("Sorry, here is my card.")
                        .photo(CARD_ALONE, "09:57:00", 33)
                        .toRead("inside", "inside", "The card completes the first message.")
                        .noting("id-separate"),
                new Draft("34-already-submitted.eml", MAREN, "06:34", "07:03:00")
                        .subject("Re: Maren Tollisker, 06:34, Quay clinic")
                        .photo(CASSETTE_AND_CARD, "07:02:20", 34)
                        .held(
                                "inside",
                                "inside",
                                "Maren sends another photo after her submission was ready to be read.",
                                "already-submitted"));
    }
}
