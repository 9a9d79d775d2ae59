package org.tidegate.examination.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidegate.finding.DeliveryFacts;
import org.tidegate.finding.PictureFinding;
import org.tidegate.finding.PictureFinding.Legibility;
import org.tidegate.message.Limits;
import org.tidegate.message.MailMessage;
import org.tidegate.message.MessageReader;

/**
 * Pictures of the visible messages (../shared/data/messages-visible, made by another hand); what they show is in its truth.jsonl.
 */
class VisibleMessagesTest {

    private final PictureExaminer examiner = new PictureExaminer(LiveRules.read());

    @ParameterizedTest
    @CsvSource({
        "017-late,                  1, true,  true",
        "020-late-in-transit,       1, true,  true",
        "027-perfect-timer,         1, true,  true",
        "034-exif-stripped,         1, true,  true",
        "036-abroad-unset-zone,     1, true,  true",
        "040-photo-unreadable-blur, ?, ?,     false",
        "041-read-early,            1, true,  true",
        "043-clock-wrong-fast,      1, true,  true",
        "074-perfect-stated,        1, true,  true",
        "045-no-id,                 1, false, true",
        "081-supplement-first,      1, false, true",
        "084-supplement-second,     0, true,  true",
        "145-photo-in-pdf,          1, true,  true",
    })
    void showWhatTheirStoryTells(String file, String cassettes, String document, boolean readable) {
        byte[] raw = OutsideData.bytes(OutsideData.path("messages-visible/" + file + ".eml"));
        MailMessage message = MessageReader.read(raw, Limits.standard());
        PictureResult result =
                examiner.examine(message.attachments(), new DeliveryFacts(Optional.empty(), new byte[16], List.of()));
        assertThat(result.pictures()).hasSize(1);
        PictureFinding p = result.pictures().get(0);
        assertThat(p.readable()).isEqualTo(PictureFinding.Decoding.DECODED);
        assertThat(p.kind()).isEqualTo(PictureFinding.Kind.PHOTO);
        assertThat(p.legibility().map(Legibility::readable)).as("" + p).contains(readable);
        if (readable) {
            assertThat(p.cassettes()).as("" + p).hasSize(Integer.parseInt(cassettes));
            assertThat(p.document().present()).as("" + p).isEqualTo(Boolean.parseBoolean(document));
        }
    }
}
