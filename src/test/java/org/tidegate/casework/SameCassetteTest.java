package org.tidegate.casework;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidegate.casework.Retaining.Why;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.finding.PictureFinding.Fingerprints;
import org.tidegate.finding.Severity;
import org.tidegate.render.OneKit;
import org.tidegate.store.StoredJson;
import org.tidegate.work.SubmissionId;

/** The same cassette photographed again beside another person's ID is noted, and holds nobody up. */
class SameCassetteTest {

    private static final int CASSETTE = 13;

    @TempDir
    Path folder;

    private SampleDesk sample;

    @BeforeEach
    void open() throws IOException {
        sample = new SampleDesk(folder, Instant.parse("2026-05-04T06:10:00Z"));
    }

    @AfterEach
    void close() {
        sample.close();
    }

    @Test
    void itIsNotedWithTheOtherPersonsSubmission() {
        SubmissionId first = sample.take(mail("01-perfect.eml", CASSETTE, 0));
        assertThat(reuse(first)).isEmpty();
        SubmissionId second = sample.take(mail("02-stated-only.eml", CASSETTE, 1));
        assertThat(second).isNotEqualTo(first);
        assertThat(reuse(second)).singleElement().satisfies(d -> {
            assertThat(d.severity()).isEqualTo(Severity.NOTE);
            assertThat(d.reason()).contains("by what is written on it", "another person's submission");
        });
        assertThat(view(second).open()).extracting(Discrepancy::code).doesNotContain(DiscrepancyCode.PHOTO_REUSED);
        assertThat(reuse(first)).as("which came before").isEmpty();
    }

    @Test
    void anotherCassetteOfTheKitIsNot() {
        sample.take(mail("01-perfect.eml", CASSETTE, 0));
        assertThat(reuse(sample.take(mail("02-stated-only.eml", 20, 0)))).isEmpty();
    }

    @Test
    void onesOwnCassetteAgainIsNot() {
        SubmissionId first = sample.take(mail("01-perfect.eml", CASSETTE, 0));
        SubmissionId again = sample.take(mail("34-already-submitted.eml", CASSETTE, 1));
        assertThat(again).isEqualTo(first);
        assertThat(reuse(again)).isEmpty();
    }

    @Test
    void whatIsForgottenIsNotFoundAgain() {
        SubmissionId first = sample.take(mail("01-perfect.eml", CASSETTE, 0));
        sample.desk().retaining().forget(SampleDesk.OFFICER, first, Why.ASKED_FOR);
        assertThat(reuse(sample.take(mail("02-stated-only.eml", CASSETTE, 1)))).isEmpty();
    }

    @Test
    void fingerprintsKeptByAnOlderVersionAreReadWithoutWriting() {
        String old = "{\"centre\":null,\"cropped\":[],\"exact\":\"aa\",\"turned\":[],\"whole\":null}";
        assertThat(StoredJson.read(old, Fingerprints.class).written()).isEmpty();
    }

    private SubmissionView view(SubmissionId id) {
        return sample.desk().casebook().submission(id, sample.now()).orElseThrow();
    }

    private List<Discrepancy> reuse(SubmissionId id) {
        return view(id).assessment().discrepancies().stream()
                .filter(d -> d.code() == DiscrepancyCode.PHOTO_REUSED)
                .toList();
    }

    /** A mail of the sample morning with this photo instead of its own; what kind of file it is, its content tells. */
    private static byte[] mail(String file, int cassette, int shot) {
        try {
            String mail = Files.readString(Path.of("sample-mailbox", file), StandardCharsets.ISO_8859_1);
            int from = mail.indexOf("\r\n\r\n", mail.indexOf("Content-Type: image/jpeg")) + 4;
            int to = mail.indexOf("\r\n--", from);
            String photo = Base64.getMimeEncoder().encodeToString(png(cassette, shot));
            return (mail.substring(0, from) + photo + mail.substring(to)).getBytes(StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] png(int cassette, int shot) throws IOException {
        BufferedImage image = OneKit.photo(cassette, true, shot, OneKit.BESIDE).image();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return bytes.toByteArray();
    }
}
