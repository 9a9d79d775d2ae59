package org.tidegate.sample;

import static org.tidegate.sample.Bookings.*;
import static org.tidegate.sample.Shot.*;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The sample morning, message by message, with the truth of each told from the story, never from the program's output. */
final class Stories {

    private Stories() {}

    static List<Story> all() {
        List<Story> all = new ArrayList<>();
        all.addAll(inTime());
        all.addAll(StoriesOfTime.all());
        all.addAll(StoriesOfPeople.all());
        all.addAll(StoriesOfFiles.all());
        return all.stream().sorted(Comparator.comparing(Story::file)).toList();
    }

    private static List<Story> inTime() {
        return List.of(
                new Draft("01-perfect.eml", MAREN, "06:34", "07:00:10")
                        .photo(CASSETTE_AND_CARD, "06:59:05", 1)
                        .toRead("inside", "inside", "Maren does everything right; the observer started the timer."),
                new Draft("02-stated-only.eml", CALLAN, "06:35", "07:01:30")
                        .photo(CASSETTE_AND_CARD, "07:00:40", 2)
                        .toRead(
                                "inside",
                                "inside",
                                "No timer was recorded; the time that Callan states lies in his slot."),
                new Draft("03-spanish.eml", IVONNE, "06:48", "07:14:50")
                        .subject("Prueba de Ivonne Castresana, 6:48 h, Pier")
                        .body("Buenos días:\n\nadjunto la foto de la prueba.\n\nUn saludo")
                        .photo(CASSETTE_AND_CARD, "07:13:40", 3)
                        .toRead("inside", "inside", "Ivonne writes in Spanish."),
                new Draft("04-phone-three-hours-fast.eml", DORSA, "06:50", "07:16:30")
                        .phone(Phone.EIDER)
                        .phoneFast(3 * 3600)
                        .photo(CASSETTE_AND_CARD, "07:15:20", 4)
                        .toRead(
                                "inside",
                                "inside",
                                "Dorota's phone is three hours fast, for photo and mail alike: the difference of both counts.")
                        .noting("clocks-conflict"),
                new Draft("05-abroad-zone.eml", HAMISH, "07:03", "07:29:40")
                        .phone(Phone.EIDER)
                        .phoneZone("Europe/Oslo")
                        .photo(CASSETTE_AND_CARD, "07:28:30", 5)
                        .toRead(
                                "inside",
                                "inside",
                                "Hamish's phone keeps Oslo time and writes no zone into the photo; the same phone wrote the mail."),
                new Draft("06-stripped.eml", TERESE, "07:05", "07:31:00")
                        .subject("Thérèse Kervadec 7h05 héliport")
                        .strippedPhoto(CASSETTE_AND_CARD, 6)
                        .toRead(
                                "undetermined",
                                "inside",
                                "The mail program stripped the capture time; nothing speaks against the photo.")
                        .noting("no-capture-time"),
                new Draft("07-webmail.eml", OSKAR, "07:19", "07:45:20")
                        .phone(Phone.WEBMAIL)
                        .photo(CASSETTE_AND_CARD, "07:43:50", 7)
                        .toRead("inside", "inside", "Oskar sends from webmail; the photo's own time and zone stand."),
                new Draft("08-other-address.eml", OLGA, "11:48", "12:14:20")
                        .from("Olga P.", "olgap@brinemail.example")
                        .photo(CASSETTE_AND_CARD, "12:13:00", 8)
                        .toRead("inside", "inside", "Olga writes from an address that is not in the book.")
                        .noting("sender-unknown"),
                new Draft("09-nickname.eml", MARGARET, "09:33", "09:59:30")
                        .subject("Maggie Corrieburn 9.33 quay")
                        .photo(CASSETTE_AND_CARD, "09:58:20", 9)
                        .toRead("inside", "inside", "Margaret signs with the short form of her name."));
    }
}
