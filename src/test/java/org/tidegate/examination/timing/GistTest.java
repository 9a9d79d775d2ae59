package org.tidegate.examination.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tidegate.examination.timing.Scene.exif;

import org.junit.jupiter.api.Test;
import org.tidegate.finding.WindowVerdict;

/** What operators read of the cases that stay open. */
class GistTest {

    private static final String PHONE = "Kestrel Mail 8.2 (K5; phone)";

    @Test
    void tellsTheWaysOutOfAContradictionApart() {
        WindowVerdict photo = Scene.timer("11:03:46+01:00")
                .program(PHONE)
                .date("11:17:43", "+01:00")
                .arrived("11:29:50+01:00")
                .received("smtp.example.org", "198.51.100.24", "11:29:47+01:00")
                .photo("Kestrel", "K5", exif("11:16:51"))
                .judge()
                .photo()
                .orElseThrow();
        assertThat(VerdictText.gist(photo))
                .contains(
                        "unless the clock of the Kestrel K5 is right: the photo was taken at least 21 min 8 s after",
                        "Unless a phone hands its message over within 3 min: the photo was taken at least 12 min 5 s after");
    }

    @Test
    void saysThatTheZoneIsOpenInsteadOfBlamingTheClock() {
        TimeJudgement j = Scene.timer("07:00:00+01:00")
                .program("Brae Webmail 3.2")
                .arrived("07:26:12+01:00")
                .photo("Ostrea", "Ostrea 3", exif("08:25:05"))
                .judge();
        assertThat(VerdictText.gist(j.photo().orElseThrow())).contains("The photo's time bears no zone");
        assertThat(j.phoneClock()).isEmpty();
        assertThat(j.conflict()).isEmpty();
    }

    @Test
    void saysWhatIsMissingWhereNoLineOfOursTells() {
        TimeJudgement j = Scene.timer("07:00:00+01:00")
                .program(PHONE)
                .received("smtp.example.org", "198.51.100.24", "07:26:02+01:00")
                .photo("Kestrel", "K5", exif("07:25:00"))
                .judge();
        assertThat(VerdictText.gist(j.sent()))
                .isEqualTo("no line of our own mail server tells at what time the message reached us, and no delivery"
                        + " time is known.");
    }

    @Test
    void doesNotTakeALineBelowTheBoundaryForOurServers() {
        TimeJudgement j = Scene.timer("07:00:00+01:00")
                .program(PHONE)
                .arrived("08:27:00+01:00")
                .received("mx.skarrasound.example", "192.0.2.1", "07:30:00+01:00")
                .photo("Kestrel", "K5", exif("07:25:00"))
                .judge();
        assertThat(VerdictText.gist(j.sent()))
                .contains("A mail server that is not ours but calls itself mx.skarrasound.example took the message");
    }

    @Test
    void quotesThePersonAsWritten() {
        WindowVerdict photo = Scene.slot("14:45:00+01:00")
                .stated("02:49:00")
                .program(PHONE)
                .date("15:14:04", "+01:00")
                .arrived("15:14:04+01:00")
                .photo("Kestrel", "K5", exif("15:13:18"))
                .judge()
                .photo()
                .orElseThrow();
        assertThat(photo.derivation().toString())
                .contains("The participant wrote 02:49, which means 14:49:00 (+01:00), give or take 2 min");
    }
}
