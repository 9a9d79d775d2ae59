package org.tidegate.sample;

import static org.tidegate.sample.Bookings.*;
import static org.tidegate.sample.Shot.*;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/** Stories whose point is the photo, the kit or another file. */
final class StoriesOfFiles {

    private StoriesOfFiles() {}

    static List<Story> all() {
        return List.of(
                new Draft("40-no-photo.eml", JONAS, "09:35", "10:00:30")
                        .body("My photo is attached.\n\nJonas")
                        .held("-", "inside", "Jonas forgot the attachment.", "no-photo"),
                new Draft("41-no-cassette.eml", CARYS, "09:48", "10:13:30")
                        .photo(CARD_ALONE, "10:12:00", 41)
                        .held("-", "inside", "Only the card is in the picture.", "no-cassette"),
                new Draft("42-blurred.eml", BRENDAN, "09:50", "10:16:00")
                        .photo(BLURRED, "10:15:00", 42)
                        .held(
                                "inside",
                                "inside",
                                "Nobody could read the cassette from this photo.",
                                "photo-unreadable"),
                new Draft("43-dark.eml", INGRID, "10:03", "10:29:00")
                        .photo(DARK, "10:28:00", 43)
                        .held("inside", "inside", "The cabin was dark.", "photo-unreadable"),
                new Draft("44-no-id.eml", MOHAN, "10:05", "10:31:00")
                        .photo(CASSETTE_ALONE, "10:30:00", 44)
                        .held("inside", "inside", "Mohan photographed the cassette alone.", "no-id"),
                new Draft("45-id-separate.eml", SOLENE, "10:18", "10:44:30")
                        .photo(CASSETTE_ALONE, "10:43:00", 45)
                        .photo(CARD_ALONE, "10:43:40", 46)
                        .toRead("inside", "inside", "Two photos: cassette and card apart, which is noted.")
                        .noting("id-separate"),
                new Draft("46-reused.eml", EWAN, "10:20", "10:46:00")
                        .attach(
                                "image/jpeg",
                                "IMG_1001.jpg",
                                ExifWriter.write(
                                        Shots.jpeg(CASSETTE_AND_CARD, MAREN, 1),
                                        "Fulmar",
                                        "F6",
                                        LocalDateTime.parse("2026-05-04T10:45:00"),
                                        Optional.of("+01:00")))
                        .held(
                                "inside",
                                "inside",
                                "Ewan sends the photo that Maren sent in the morning, its time rewritten.",
                                "photo-reused"),
                new Draft("47-pdf.eml", KIRSTEN, "10:33", "10:59:00")
                        .attach(
                                "application/pdf",
                                "scan.pdf",
                                Documents.pdf(Shots.jpeg(CASSETTE_AND_CARD, KIRSTEN, 47)))
                        .toRead(
                                "undetermined",
                                "inside",
                                "Kirsten scanned the photo into a PDF, which kept no capture time.")
                        .noting("no-capture-time"),
                new Draft("48-zip.eml", VICTOR, "11:18", "11:43:40")
                        .attach(
                                "application/zip",
                                "photo.zip",
                                Documents.zip(
                                        "IMG_1048.jpg",
                                        ExifWriter.write(
                                                Shots.jpeg(CASSETTE_AND_CARD, VICTOR, 48),
                                                "Fulmar",
                                                "F6",
                                                LocalDateTime.parse("2026-05-04T11:42:30"),
                                                Optional.of("+01:00"))))
                        .toRead("inside", "inside", "Victor zipped the photo."),
                new Draft("49-program.eml", MAEVE, "11:20", "11:46:00")
                        .photo(CASSETTE_AND_CARD, "11:45:00", 49)
                        .attach("application/octet-stream", "viewer.exe", Documents.program())
                        .held("inside", "inside", "A program is attached beside the photo.", "attachment-unsafe"),
                new Draft("50-heic.eml", RUTH, "11:35", "12:01:00")
                        .attach("image/heic", "IMG_1050.HEIC", Documents.heicHead())
                        .held(
                                "undetermined",
                                "inside",
                                "Ruth's phone sent a format that cannot be decoded here.",
                                "format-unsupported")
                        .noting("no-capture-time"),
                new Draft("51-kit-unknown.eml", PAULA, "10:35", "11:01:00")
                        .photo(CASSETTE_AND_CARD, "11:00:00", 51)
                        .held("-", "-", "The book names a kit of which the rules know nothing.", "kit-unknown"),
                new Draft("52-lot-expired.eml", ANGUS, "10:48", "11:14:00")
                        .photo(CASSETTE_AND_CARD, "11:13:00", 52)
                        .held("inside", "inside", "The lot expired in March.", "lot-expired"),
                new Draft("53-damaged-mime.eml", LENA, "11:04", "11:30:00")
                        .photo(CASSETTE_AND_CARD, "11:29:00", 53)
                        .body("caf\u00e9 table, bad light, but readable")
                        .header("X-Note", "=?utf-8?Q?broken")
                        .toRead("inside", "inside", "A header is damaged; everything else can be read."),
                new Draft("54-unrelated-picture.eml", NEIL, "11:50", "12:16:00")
                        .photo(NEITHER, "12:15:00", 54)
                        .held("-", "inside", "A picture of a table, nothing on it.", "no-cassette", "no-id"),
                new Draft("55-logo-only.eml", AGNES, "12:03", "12:29:00")
                        .attach("image/png", "logo.png", Documents.logo())
                        .body("Photo attached.\n\nAgnes Rowanlea\n")
                        .held("-", "inside", "Only the logo of a signature is attached.", "no-photo"),
                new Draft("56-lot-quarantined.eml", HILDE, "10:50", "11:16:00")
                        .photo(CASSETTE_AND_CARD, "11:15:00", 56)
                        .held("inside", "inside", "Hilde's lot is quarantined.", "lot-quarantined"),
                new Draft("57-edited.eml", TOMAS, "12:20", "12:46:30")
                        .attach(
                                "image/jpeg",
                                "IMG_1057.jpg",
                                ExifWriter.write(
                                        Shots.jpeg(CASSETTE_AND_CARD, TOMAS, 57),
                                        "Fulmar",
                                        "F6",
                                        LocalDateTime.parse("2026-05-04T12:45:10"),
                                        LocalDateTime.parse("2026-05-04T12:52:40"),
                                        Optional.of("+01:00")))
                        .toRead(
                                "inside",
                                "inside",
                                "The file says that it was changed after the photo was taken: a hint, no proof.")
                        .noting("photo-edited"));
    }
}
