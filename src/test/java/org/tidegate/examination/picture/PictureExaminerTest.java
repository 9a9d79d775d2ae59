package org.tidegate.examination.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidegate.finding.CaptureClue;
import org.tidegate.finding.DeliveryFacts;
import org.tidegate.finding.FileProblem;
import org.tidegate.finding.PictureFinding;
import org.tidegate.finding.PictureFinding.Decoding;
import org.tidegate.finding.PictureFinding.Kind;
import org.tidegate.message.Attachment;
import org.tidegate.message.Problem;

class PictureExaminerTest {

    private static final DeliveryFacts FACTS = new DeliveryFacts(Optional.empty(), new byte[16], List.of());

    private final PictureExaminer examiner = new PictureExaminer(LiveRules.read());

    @Test
    void theSameFilesGiveTheSameFindings() {
        List<Attachment> files = List.of(photo("a.jpg"));
        assertThat(examiner.examine(files, FACTS)).isEqualTo(examiner.examine(files, FACTS));
    }

    /** Invented names in the shapes that camera programs give; common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "IMG_20260504_072531.jpg,   2026-05-04T07:25:31",
        "20260504_072531.jpg,       2026-05-04T07:25:31",
        "2026-05-04 07.25.31.jpg,   2026-05-04T07:25:31",
        "IMG_20261504_072531.jpg,   ",
        "IMG_4711.jpg,              ",
    })
    void readsTheTimeInAFileName(String name, String wall) {
        List<CaptureClue> times = only(photo(name)).capture();
        assertThat(times).hasSize(wall == null ? 0 : 1);
        assertThat(times).allSatisfy(t -> {
            assertThat(t.kind()).isEqualTo(CaptureClue.Kind.FILE_NAME);
            assertThat(t.wall()).isEqualTo(wall);
            assertThat(t.offset()).isEmpty();
        });
    }

    @Test
    void tellsLogosTrackersAndScreenshotsFromPhotos() {
        assertThat(only(inline(drawn(120, 60), "logo.png")).kind()).isEqualTo(Kind.DECORATION);
        assertThat(only(inline(drawn(1, 1), "t.png")).kind()).isEqualTo(Kind.DECORATION);
        assertThat(only(inline(drawn(1200, 160), "banner.png")).kind()).isEqualTo(Kind.DECORATION);
        assertThat(only(png(screen(540, 1170), "bild.png")).kind()).isEqualTo(Kind.SCREENSHOT);
        assertThat(only(png(TestPictures.scene(540, 720, 1), "Screenshot_20260504.png"))
                        .kind())
                .isEqualTo(Kind.SCREENSHOT);
        assertThat(only(png(TestPictures.scene(540, 960, 1), "photo.png")).kind())
                .isEqualTo(Kind.PHOTO);
    }

    @Test
    void whatCannotBeShownBecomesAFileProblem() {
        byte[] jpeg = TestPictures.jpeg(TestPictures.scene(320, 240, 1), 0.8, false);
        List<Attachment> files = List.of(
                file("heic", "x.heic", "image/heic", heic()),
                file("bomb", "x.png", "image/png", PictureDecoderTest.pngHeader(60_000, 60_000)),
                file("broken", "x.jpg", "image/jpeg", Arrays.copyOf(jpeg, 20)),
                file("raw", "x.psd", "image/vnd.adobe.photoshop", new byte[] {'8', 'B', 'P', 'S'}),
                file("doc", "x.pages", "application/octet-stream", new byte[] {1}),
                file("text", "note.txt", "text/plain", new byte[] {'h', 'i'}));
        List<Problem> reading = List.of(new Problem(Problem.Kind.ENCRYPTED, "zip", "An encrypted archive."));
        assertThat(examiner.examine(files, reading, FACTS).problems())
                .extracting(FileProblem::path, FileProblem::kind)
                .containsExactly(
                        tuple("zip", FileProblem.Kind.UNSAFE),
                        tuple("heic", FileProblem.Kind.UNSUPPORTED),
                        tuple("bomb", FileProblem.Kind.UNSAFE),
                        tuple("broken", FileProblem.Kind.UNSUPPORTED),
                        tuple("raw", FileProblem.Kind.UNSUPPORTED),
                        tuple("doc", FileProblem.Kind.UNSUPPORTED));
    }

    /** Past the bound, pictures are listed, not decoded: five thousand are as cheap as forty. */
    @Test
    void fiveThousandPicturesAreBoundedWork() {
        List<Attachment> files = new ArrayList<>(Collections.nCopies(5_000, png(drawn(8, 8), "p.png")));
        List<PictureFinding> pictures = examiner.examine(files, FACTS).pictures();
        assertThat(pictures).hasSize(5_000);
        assertThat(pictures.stream().filter(p -> p.readable() == Decoding.DECODED))
                .hasSize(40);
        assertThat(pictures.get(4_999).readable()).isEqualTo(Decoding.OVER_LIMIT);
    }

    /** Pixels of HEIC come from an outside decoder, and only where the delivery facts record it. */
    @Test
    void anOutsideDecoderIsUsedOnlyWhereRecorded() {
        byte[] jpeg = TestPictures.jpeg(TestPictures.scene(320, 240, 1), 0.8, false);
        PictureExaminer with = new PictureExaminer(LiveRules.read(), content -> Optional.of(jpeg));
        List<Attachment> files = List.of(file("2", "x.heic", "image/heic", heic()));
        DeliveryFacts recorded = new DeliveryFacts(Optional.empty(), new byte[16], List.of(OutsideDecoder.HEIF));
        assertThat(with.examine(files, recorded).pictures().get(0).readable()).isEqualTo(Decoding.DECODED);
        assertThat(with.examine(files, FACTS).pictures().get(0).readable()).isEqualTo(Decoding.UNSUPPORTED);
    }

    private PictureFinding only(Attachment file) {
        return examiner.examine(List.of(file), FACTS).pictures().get(0);
    }

    private static Attachment photo(String name) {
        byte[] jpeg = TestPictures.jpeg(TestPictures.scene(320, 240, 1), 0.8, false);
        return TestPictures.attached(name, "image/jpeg", jpeg);
    }

    private static Attachment png(BufferedImage image, String name) {
        return TestPictures.attached(name, "image/png", TestPictures.encode(image, "png"));
    }

    private static Attachment inline(BufferedImage image, String name) {
        Attachment a = png(image, name);
        return new Attachment(a.path(), a.fileName(), a.declaredType(), a.type(), a.container(), true, a.content());
    }

    private static Attachment file(String path, String name, String type, byte[] content) {
        return new Attachment(path, Optional.of(name), type, type, Attachment.Container.MESSAGE, false, content);
    }

    /** File type box of ISO/IEC 23008-12 and nothing more. */
    private static byte[] heic() {
        return new byte[] {0, 0, 0, 16, 'f', 't', 'y', 'p', 'h', 'e', 'i', 'c', 0, 0, 0, 0};
    }

    private static BufferedImage drawn(int w, int h) {
        return new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
    }

    /** Flat surfaces and text-like bars. */
    private static BufferedImage screen(int w, int h) {
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, w, h);
        g.setColor(Color.DARK_GRAY);
        for (int y = 40; y < h; y += 40) {
            g.fillRect(20, y, w - 60, 6);
        }
        g.dispose();
        return image;
    }
}
