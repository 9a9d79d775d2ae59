package org.tidegate.casework;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.Period;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidegate.booking.TestKey;
import org.tidegate.casework.Judging.Reason;
import org.tidegate.casework.Retaining.Need;
import org.tidegate.casework.Retaining.Outcome;
import org.tidegate.casework.Retaining.Why;
import org.tidegate.casework.Splitting.Pick;
import org.tidegate.casework.Splitting.Place;
import org.tidegate.examination.picture.CropShape;
import org.tidegate.work.SubmissionId;

/** The cassette by itself outlives the photo with the ID, and goes at its own time, or at once where a person asks. */
class CropsKeptTest {

    private static final Instant TAKEN = Instant.parse("2026-05-04T06:10:00Z");

    @TempDir
    Path folder;

    private SampleDesk sample;
    private Desk desk;

    @BeforeEach
    void open() throws IOException {
        sample = new SampleDesk(folder, TAKEN);
        desk = sample.desk();
    }

    @AfterEach
    void close() {
        sample.close();
    }

    private void setAside(SubmissionId id) {
        ActionResult done = desk.judging().setAside(SampleDesk.LEAD, sample.ticket(id), Reason.of("other"));
        assertThat(done).as(done.words()).isInstanceOf(ActionResult.Done.class);
    }

    /** Terms are those of {@code rules/retention.yaml}, in local days. */
    private void forgetAfter(String term, Duration more) {
        sample.turnTo(ZonedDateTime.parse("2026-05-04T07:10:00+01:00[Europe/London]")
                .plus(Period.parse(term))
                .toInstant()
                .plus(more));
        desk.forgetting().drain();
    }

    private List<KeptCrop> crops(SubmissionId id) {
        return desk.casebook().submission(id, sample.now()).orElseThrow().crops();
    }

    private long blobs() throws IOException {
        try (Stream<Path> files = Files.walk(folder.resolve("blobs"))) {
            return files.filter(Files::isRegularFile).count();
        }
    }

    private String ledger() {
        return desk.store().read(tx -> tx.ledger().leaves(0, 10_000)).stream()
                .map(b -> new String(b, StandardCharsets.UTF_8))
                .reduce("", (a, b) -> a + "\n" + b);
    }

    @Test
    void itOutlivesThePhotoWithItsLinePlacesAndGoesAtItsOwnTime() throws IOException {
        SubmissionId id = sample.take("01-perfect.eml");
        byte[] before = desk.casebook()
                .cassette(id, crops(id).get(0).number())
                .orElseThrow()
                .content();
        setAside(id);
        forgetAfter("P14D", Duration.ofMillis(1));
        assertThat(desk.casebook().picture(id, 0, "2")).as("the photo").isEmpty();
        KeptCrop kept = crops(id).get(0);
        assertThat(kept.shape().kit()).contains("SKERRY-20");
        assertThat(kept.shape().lines()).extracting(CropShape.Place::line).containsExactly("T", "C");
        PictureBytes png = desk.casebook().cassette(id, kept.number()).orElseThrow();
        assertThat(png.mediaType()).isEqualTo("image/png");
        assertThat(png.content()).isEqualTo(before);
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png.content()));
        assertThat(image.getWidth()).isEqualTo(kept.shape().width());
        assertThat(image.getHeight()).isEqualTo(kept.shape().height());
        assertThat(desk.retaining().stock().counts().cassettes()).isEqualTo(1);
        assertThat(ledger()).contains("cassette-kept").doesNotContain("cassettes-forgotten");
        forgetAfter("P90D", Duration.ofMillis(1));
        assertThat(desk.casebook().cassette(id, kept.number())).isEmpty();
        assertThat(desk.retaining().stock().counts().cassettes()).isZero();
        assertThat(blobs()).isZero();
        assertThat(ledger()).contains("cassettes-forgotten").contains("\"cassettes\"");
        assertThat(desk.forgetting().drain()).as("nothing is forgotten twice").isZero();
        Kept.ledger(desk.store());
    }

    @Test
    void whatAPersonAsksToForgetTakesTheCassetteAlong() throws IOException {
        SubmissionId id = sample.take("01-perfect.eml");
        long number = crops(id).get(0).number();
        assertThat(desk.retaining().forget(SampleDesk.OFFICER, id, Why.ASKED_FOR))
                .isInstanceOf(Outcome.Done.class);
        assertThat(desk.casebook().cassette(id, number)).isEmpty();
        desk.forgetting().drain();
        assertThat(blobs()).isZero();
        assertThat(ledger()).contains("cassettes-forgotten").contains("asked-for");
        Kept.ledger(desk.store());
    }

    @Test
    void whatIsHeldBackIsKeptBeyondItsTime() {
        SubmissionId id = sample.take("01-perfect.eml");
        setAside(id);
        assertThat(desk.retaining().holdBack(SampleDesk.OFFICER, id, Need.DISPUTE))
                .isInstanceOf(Outcome.Done.class);
        forgetAfter("P90D", Duration.ofDays(1));
        long number = crops(id).get(0).number();
        assertThat(desk.casebook().cassette(id, number)).isPresent();
        assertThat(desk.retaining().lift(SampleDesk.OFFICER, id)).isInstanceOf(Outcome.Done.class);
        desk.forgetting().drain();
        assertThat(desk.casebook().cassette(id, number)).isEmpty();
    }

    @Test
    void ofASplitMailEachHasItsOwnCassetteAlsoAfterThePhotosAreForgotten() {
        SubmissionId home = sample.take(FamilyMail.raw());
        List<KeptCrop> both = crops(home);
        assertThat(both).hasSize(2);
        KeptCrop theirs = both.get(1);
        assertThat(desk.splitting()
                        .split(
                                SampleDesk.OPERATOR,
                                sample.ticket(home),
                                new TestKey(FamilyMail.OTHER, 1),
                                Map.of(new Pick(0, theirs.path()), Place.THERE),
                                Splitting.Why.ONE_MAIL_FOR_SEVERAL))
                .isInstanceOf(ActionResult.Done.class);
        SubmissionId part = SubmissionId.parse(home + ".1").orElseThrow();
        setAside(home);
        setAside(part);
        forgetAfter("P30D", Duration.ofMillis(-1));
        assertThat(desk.casebook().picture(home, 0, both.get(0).path())).isEmpty();
        assertThat(crops(home)).containsExactly(both.get(0));
        assertThat(crops(part)).containsExactly(theirs);
        assertThat(desk.casebook().cassette(home, theirs.number())).isEmpty();
        assertThat(desk.casebook().cassette(part, both.get(0).number())).isEmpty();
    }
}
