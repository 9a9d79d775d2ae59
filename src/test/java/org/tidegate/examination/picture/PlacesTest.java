package org.tidegate.examination.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tidegate.finding.DeliveryFacts;
import org.tidegate.finding.PictureFinding;
import org.tidegate.render.SamplePhoto;

/** Places are told in pixels of the picture as it came, however coarse the one is that was looked at. */
class PlacesTest {

    @Test
    void aFinerPictureHasItsPlacesInItsOwnPixels() {
        BufferedImage photo = SamplePhoto.seed(11).image();
        BufferedImage fine = new BufferedImage(photo.getWidth() * 3, photo.getHeight() * 3, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = fine.createGraphics();
        g.drawImage(photo, 0, 0, fine.getWidth(), fine.getHeight(), null);
        g.dispose();
        PictureFinding coarse = examined(photo);
        PictureFinding finding = examined(fine);
        assertThat(finding.width()).isEqualTo(fine.getWidth());
        assertThat(finding.cassettes()).hasSize(1);
        for (int i = 0; i < 4; i++) {
            assertThat(finding.cassettes().get(0).box().get(i).x())
                    .isCloseTo(3 * coarse.cassettes().get(0).box().get(i).x(), within(0.02 * fine.getWidth()));
            assertThat(finding.document().box().get(i).y())
                    .isCloseTo(3 * coarse.document().box().get(i).y(), within(0.02 * fine.getHeight()));
        }
    }

    private static PictureFinding examined(BufferedImage photo) {
        byte[] jpeg = TestPictures.jpeg(photo, 0.9, false);
        return new PictureExaminer(LiveRules.read())
                .examine(
                        List.of(TestPictures.attached("photo.jpg", "image/jpeg", jpeg)),
                        new DeliveryFacts(Optional.empty(), new byte[16], List.of()))
                .pictures()
                .get(0);
    }
}
