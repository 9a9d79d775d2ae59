package org.tidegate.examination.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidegate.finding.PictureFinding.Decoding;

/**
 * Pictures that the test artifact of tika-parser-image-module carries (Apache-2.0). Expected values are those that exiftool 12.57 reads
 * (../shared/data/pictures/exif-tika/expected-exiftool-12.57.csv); testJPEG_GEO_2's camera clock is a day off its satellite's.
 */
class TikaPicturesTest {

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "testJPEG.jpg,                    DECODED,     100,  75,  -",
                "testJPEG_EXIF.jpg,               DECODED,     100,  68,  EXIF_ORIGINAL 2009-08-11T09:09:45.490",
                "testJPEG_EXIF_emptyDateTime.jpg, DECODED,      64,  54,  -",
                "testJPEG_GEO.jpg,                DECODED,     100,  68,  EXIF_ORIGINAL 2009-08-11T09:09:45.490",
                "testJPEG_GEO_2.jpg,              DECODED,     100,  75,  EXIF_ORIGINAL 2012-02-19T16:43:29",
                "testJPEG_GEO_2.jpg,              DECODED,     100,  75,  GPS 2012-02-20T16:44:22",
                "testJPEG_oddTagComponent.jpg,    DECODED,     251, 384,  -",
                "testPNG.png,                     DECODED,     100,  75,  -",
                "testWEBP.webp,                   DECODED,     150, 150,  -",
                "testWebp_Alpha_Lossless.webp,    DECODED,     400, 301,  -",
                "testWebp_Alpha_Lossy.webp,       DECODED,     400, 301,  -",
                "testGIF.gif,                     DECODED,     100,  75,  -",
                "testTIFF.tif,                    DECODED,     100,  75,  -",
                "testBMP.bmp,                     DECODED,     100,  75,  -",
                "IMG_1034.heic,                   UNSUPPORTED,   0,   0,  EXIF_ORIGINAL 2018-02-05T15:11:44.277",
                "IMG_1034.heic,                   UNSUPPORTED,   0,   0,  GPS 2018-02-05T07:11:43.070",
                "testHEIF.heic,                   UNSUPPORTED,   0,   0,  EXIF_ORIGINAL 2009-08-11T09:09:45.490",
                "testPSD.psd,                     UNSUPPORTED,   0,   0,  -",
                "testJXL.jxl,                     UNSUPPORTED,   0,   0,  -",
            })
    void readsWhatTheyHold(String name, Decoding state, int width, int height, String clue) throws IOException {
        byte[] content = resource("/test-documents/" + name);
        FileFacts facts = FileFactsReader.read(content);
        Decoded decoded =
                new PictureDecoder(12_000_000).decode(content, PictureFormat.of(content), facts.orientation());
        assertThat(decoded.state()).isEqualTo(state);
        assertThat(List.of(decoded.width(), decoded.height())).isEqualTo(List.of(width, height));
        List<String> clues =
                facts.capture().stream().map(c -> c.kind() + " " + c.wall()).toList();
        if (clue == null) {
            assertThat(clues).noneMatch(c -> c.startsWith("EXIF_ORIGINAL") || c.startsWith("GPS"));
        } else {
            assertThat(clues).contains(clue);
        }
    }

    private static byte[] resource(String path) throws IOException {
        try (InputStream in = Objects.requireNonNull(TikaPicturesTest.class.getResourceAsStream(path), path)) {
            return in.readAllBytes();
        }
    }
}
