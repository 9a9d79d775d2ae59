package org.tidegate.examination.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidegate.finding.PictureFinding.Decoding;

class PictureDecoderTest {

    private final PictureDecoder decoder = new PictureDecoder(12_000_000);

    @ParameterizedTest
    @ValueSource(strings = {"jpeg", "png", "gif", "tiff", "bmp"})
    void decodesByContent(String format) {
        byte[] content = TestPictures.encode(TestPictures.scene(320, 240, 1), format);
        Decoded decoded = decode(content);
        assertThat(decoded.state()).isEqualTo(Decoding.DECODED);
        assertThat(decoded.width()).isEqualTo(320);
        assertThat(decoded.image().orElseThrow().getHeight()).isEqualTo(240);
    }

    @Test
    void decodesProgressiveJpeg() {
        Decoded decoded = decode(TestPictures.jpeg(TestPictures.scene(320, 240, 1), 0.8, true));
        assertThat(decoded.state()).isEqualTo(Decoding.DECODED);
    }

    /** Whatever arrived of a picture is looked at. */
    @ParameterizedTest
    @CsvSource({"jpeg, 0.5", "jpeg, 0.9", "png, 0.5", "png, 0.9"})
    void decodesWhatIsThereOfATruncatedFile(String format, double share) {
        byte[] whole = TestPictures.encode(TestPictures.scene(320, 240, 1), format);
        Decoded decoded = decode(Arrays.copyOf(whole, (int) (whole.length * share)));
        assertThat(decoded.state()).isEqualTo(Decoding.PARTIAL);
        BufferedImage image = decoded.image().orElseThrow();
        assertThat(image.getRGB(10, 10)).isNotEqualTo(0xFF000000);
    }

    @Test
    void largePicturesAreSubsampledWhileReading() {
        Decoded decoded =
                decode(TestPictures.encode(new BufferedImage(9000, 4000, BufferedImage.TYPE_BYTE_GRAY), "png"));
        assertThat(decoded.state()).isEqualTo(Decoding.DECODED);
        assertThat(decoded.width()).isEqualTo(9000);
        assertThat(decoded.image().orElseThrow().getWidth()).isEqualTo(PictureDecoder.LONG_SIDE);
    }

    @Test
    void aPixelBombIsNotDecoded() {
        Decoded decoded = decode(pngHeader(60_000, 60_000));
        assertThat(decoded.state()).isEqualTo(Decoding.OVER_LIMIT);
        assertThat(decoded.width()).isEqualTo(60_000);
    }

    /** Nothing but a state comes of damaged files: seeded flips over every format. */
    @ParameterizedTest
    @ValueSource(strings = {"jpeg", "png", "gif", "tiff", "bmp"})
    void damagedFilesNeverThrow(String format) {
        byte[] whole = TestPictures.encode(TestPictures.scene(96, 64, 1), format);
        Random random = new Random(format.hashCode());
        for (int i = 0; i < 300; i++) {
            byte[] damaged = whole.clone();
            for (int k = 0; k < 8; k++) {
                damaged[random.nextInt(i % 2 == 0 ? Math.min(200, whole.length) : whole.length)] =
                        (byte) random.nextInt(256);
            }
            assertThat(decode(damaged).state()).as(format + " " + i).isNotNull();
            assertThat(FileFactsReader.read(damaged)).isNotNull();
        }
    }

    /** EXIF 2.32 §4.6.4: where row 0 and column 0 of the stored picture are seen. */
    @ParameterizedTest
    @CsvSource({
        "1, 0, 0",
        "2, 39, 0",
        "3, 39, 19",
        "4, 0, 19",
        "5, 0, 0",
        "6, 19, 0",
        "7, 19, 39",
        "8, 0, 39",
    })
    void turnsUpright(int orientation, int x, int y) {
        BufferedImage stored = new BufferedImage(40, 20, BufferedImage.TYPE_INT_RGB);
        stored.setRGB(0, 0, 0xFFFFFF);
        Decoded decoded = decoder.decode(TestPictures.encode(stored, "png"), PictureFormat.PNG, orientation);
        BufferedImage upright = decoded.image().orElseThrow();
        assertThat(upright.getWidth()).isEqualTo(orientation >= 5 ? 20 : 40);
        assertThat(upright.getRGB(x, y) & 0xFFFFFF).isEqualTo(0xFFFFFF);
        assertThat(decoded.width()).isEqualTo(upright.getWidth());
    }

    private Decoded decode(byte[] content) {
        return decoder.decode(content, PictureFormat.of(content), 1);
    }

    /** The signature, IHDR and an empty IDAT (PNG 3rd ed. §5.2, §11.2.1). */
    static byte[] pngHeader(int w, int h) {
        ByteBuffer header = ByteBuffer.allocate(13).putInt(w).putInt(h).put(new byte[] {8, 2, 0, 0, 0});
        return ByteBuffer.allocate(8 + 25 + 12)
                .put(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'})
                .put(chunk("IHDR", header.array()))
                .put(chunk("IDAT", new byte[0]))
                .array();
    }

    private static byte[] chunk(String type, byte[] data) {
        byte[] named = ByteBuffer.allocate(4 + data.length)
                .put(type.getBytes(StandardCharsets.US_ASCII))
                .put(data)
                .array();
        CRC32 crc = new CRC32();
        crc.update(named);
        return ByteBuffer.allocate(12 + data.length)
                .putInt(data.length)
                .put(named)
                .putInt((int) crc.getValue())
                .array();
    }
}
