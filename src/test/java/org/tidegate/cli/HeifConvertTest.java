package org.tidegate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.tidegate.Needs;

/** With a picture that the test artifact of tika-parser-image-module carries. */
class HeifConvertTest {

    @Test
    void convertsAPicture() throws IOException {
        Optional<HeifConvert> converter = HeifConvert.installed(Objects.requireNonNullElse(System.getenv("PATH"), ""));
        Needs.that(converter.isPresent(), "heif-convert (package libheif-examples)");
        try (InputStream in = HeifConvertTest.class.getResourceAsStream("/test-documents/IMG_1034.heic")) {
            byte[] jpeg = converter
                    .orElseThrow()
                    .toJpeg(Objects.requireNonNull(in).readAllBytes())
                    .orElseThrow();
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(jpeg));
            assertThat(image.getWidth()).isEqualTo(4032);
            assertThat(image.getHeight()).isEqualTo(3024);
        }
        assertThat(converter.orElseThrow().toJpeg(new byte[100])).isEmpty();
    }

    @Test
    void isAbsentWhereNothingIsInstalled() {
        assertThat(HeifConvert.installed("/nowhere")).isEmpty();
    }
}
